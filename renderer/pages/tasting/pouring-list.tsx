import { useAnswer } from '#renderer/app/use-answer.ts';
import { useMeasures } from '#renderer/format/use-measures.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { type Column, DataTable } from '#renderer/parts/data-table/data-table.tsx';
import { TakenOutList } from '#renderer/parts/taken-out/taken-out-list.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

type Sample = ValueOf<'tastings:pour'>['sampleList'][number];
type Order = ValueOf<'tastings:open'>['orders'][number];

/** Which code goes on which jar's cups, how many, and how much in each. */
export function PouringCodes({ id, cups }: { readonly id: string; readonly cups: number }) {
  const list = useAnswer('tastings:pour', { tasting: id });
  const measures = useMeasures();
  return (
    <Answer of={list}>
      {({ sampleList }) => {
        const standing = sampleList.filter(({ takenOut }) => takenOut === null);
        const byJar = standing.toSorted((a, b) => (a.jar?.label ?? '').localeCompare(b.jar?.label ?? '', 'en'));
        const columns: Column<Sample>[] = [
          { head: words.jar, cell: ({ jar }) => <strong>{jar?.label}</strong> },
          { head: words.level, cell: ({ jar }) => jar?.level ?? '' },
          { head: words.code, cell: ({ code }) => <strong className="pour-code">{code}</strong> },
          { head: words.cups, cell: () => cups, isFigure: true },
        ];
        if (sampleList.some(({ served_mL }) => served_mL !== null)) {
          columns.push({
            head: words.amount,
            cell: ({ served_mL }) => (served_mL === null ? '' : measures.volume(served_mL)),
            isFigure: true,
          });
        }
        return (
          <>
            <TakenOutList samples={sampleList} isForPouring />
            <DataTable caption={words.codes} rows={byJar} rowKey={({ code }) => code} columns={columns} />
          </>
        );
      }}
    </Answer>
  );
}

interface OrdersProps {
  readonly orders: readonly Order[];
  /** Codes that are not served any more. */
  readonly gone: ReadonlyMap<string, string>;
}

/** In which order each taster is served, by code alone: it tells nothing and may lie on the table. */
export function ServingOrders({ orders, gone }: OrdersProps) {
  const sittings = Math.max(...orders.map((order) => order.sittings.length), 1);
  const columns: Column<Order>[] = [{ head: words.taster, cell: ({ name }) => name }];
  for (let place = 0; place < sittings; place += 1) {
    columns.push({
      head: words.sitting(place + 1, sittings),
      cell: (order) => (
        <ol className="pour-order">
          {order.sittings[place]?.codes.map((code) => (
            <li key={code}>{gone.has(code) ? <s>{code}</s> : code}</li>
          ))}
        </ol>
      ),
    });
  }
  return <DataTable caption={words.orders} rows={orders} rowKey={({ taster }) => taster} columns={columns} />;
}
