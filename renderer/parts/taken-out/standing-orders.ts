import type { ValueOf } from '#shared/contract/all-requests.ts';

type Tasting = ValueOf<'tastings:open'>;
type Order = Tasting['orders'][number];

/** Why each sample that is out of this tasting was taken out, by its code. */
export function takenOutCodes({ sampleList }: Pick<Tasting, 'sampleList'>): ReadonlyMap<string, string> {
  return new Map(
    sampleList.flatMap(({ code, takenOut }) => (takenOut === null ? [] : [[code, takenOut.why] as const])),
  );
}

/** A serving order without the samples that were taken out; a sitting with none left goes too. */
export function standingOrder<One extends Pick<Order, 'sittings'>>(order: One, out: ReadonlyMap<string, string>): One {
  if (out.size === 0) return order;
  const sittings = order.sittings
    .map(({ sitting, codes }) => ({ sitting, codes: codes.filter((code) => !out.has(code)) }))
    .filter(({ codes }) => codes.length > 0);
  return { ...order, sittings };
}

/** A tasting as it is poured from now on. */
export function standingTasting(tasting: Tasting): Tasting {
  const out = takenOutCodes(tasting);
  return { ...tasting, orders: tasting.orders.map((order) => standingOrder(order, out)) };
}
