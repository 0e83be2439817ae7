import { takenOutCodes } from '#renderer/parts/taken-out/standing-orders.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { saysMissed } from '#shared/missed-sample.ts';

type Tasting = ValueOf<'tastings:open'>;
type Order = Tasting['orders'][number];
type Score = ValueOf<'scores:list'>['scores'][number];
type Remark = ValueOf<'remarks:list'>['remarks'][number];

/** One serving on a taster's sheet. */
export interface SheetRow {
  readonly sitting: number;
  /** Place in the whole order, from 1. */
  readonly place: number;
  readonly code: string;
  /** Which serving of this sample it is, from 1: many samples are spread over several sittings. */
  readonly replicate: number;
}

/** The rows of a taster's sheet, in the order of serving. */
export function sheetRows({ sittings }: Pick<Order, 'sittings'>): SheetRow[] {
  let place = 0;
  const rows: SheetRow[] = [];
  const served = new Map<string, number>();
  for (const { sitting, codes } of sittings) {
    for (const code of codes) {
      place += 1;
      const replicate = (served.get(code) ?? 0) + 1;
      served.set(code, replicate);
      rows.push({ sitting, place, code, replicate });
    }
  }
  return rows;
}

/** What one serving still lacks: `whole` when none of its attributes is scored. */
export interface Lack {
  readonly code: string;
  readonly attributes: readonly string[];
  readonly isWhole: boolean;
}

export interface SheetProgress {
  readonly taster: string;
  readonly name: string;
  readonly scores: number;
  readonly expected: number;
  readonly missed: readonly string[];
  readonly lacks: readonly Lack[];
}

/** How far each taster's sheet has come, and what it still lacks. Samples that were missed are named and not waited for; of those taken out nothing counts. */
export function sheetProgress(
  tasting: Pick<Tasting, 'orders' | 'attributes' | 'sampleList'>,
  scores: readonly Score[],
  remarks: readonly Remark[],
): SheetProgress[] {
  const { attributes } = tasting;
  const out = takenOutCodes(tasting);
  const scored = new Set(scores.map((one) => `${one.taster}/${one.sample}/${one.replicate}/${one.attribute}`));
  const missedBy = new Set(
    remarks.filter(({ words }) => saysMissed(words)).map(({ taster, sample }) => `${taster}/${sample}`),
  );
  return tasting.orders.map((order) => {
    const rows = sheetRows(order).filter(({ code }) => !out.has(code));
    const missed: string[] = [];
    const lacks: Lack[] = [];
    let count = 0;
    for (const { code, replicate } of rows) {
      const open = attributes.filter(({ name }) => !scored.has(`${order.name}/${code}/${replicate}/${name}`));
      count += attributes.length - open.length;
      if (open.length === 0) continue;
      const isWhole = open.length === attributes.length;
      if (isWhole && missedBy.has(`${order.name}/${code}`)) missed.push(code);
      else lacks.push({ code, attributes: open.map(({ name }) => name), isWhole });
    }
    return {
      taster: order.taster,
      name: order.name,
      scores: count,
      expected: rows.length * attributes.length,
      missed,
      lacks,
    };
  });
}
