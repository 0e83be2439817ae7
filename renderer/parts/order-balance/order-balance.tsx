import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import { countOrders, timesWords } from './count-orders.ts';
import './order-balance.css';

const words = {
  summary: 'How evenly the serving orders are spread',
  why: 'What is tasted first, and what comes just before, colours what one tastes. So the orders give every sample each place, and each one before it, as evenly as this many tasters allow.',
  inPlace: (times: string) => `Each sample stands in each place ${times}.`,
  after: (times: string) => `Each comes straight after each other one ${times}.`,
  placeTable: 'How often each sample stands in each place',
  afterTable: 'How often a sample comes straight after another',
  sample: 'Sample',
  place: (place: number) => `Place ${place}`,
  first: 'First',
  next: (later: string) => `then ${later}`,
} as const;

/** Serving orders counted: each sample in each place, and after each other one. */
export function OrderBalance({ orders }: { readonly orders: readonly (readonly string[])[] }) {
  const { samples, places, inPlace, after } = countOrders(orders);
  if (samples.length < 2) return null;
  const all = Array.from({ length: places }, (_, place) => place);
  const pairs = samples.flatMap((one) => samples.filter((other) => other !== one).map((other) => after(one, other)));
  return (
    <details className="order-balance">
      <summary>{words.summary}</summary>
      <p className="small soft">{words.why}</p>
      <p className="small">
        {words.inPlace(timesWords(samples.flatMap((sample) => all.map((place) => inPlace(sample, place)))))}{' '}
        {words.after(timesWords(pairs))}
      </p>
      <DataTable
        caption={words.placeTable}
        rows={samples}
        rowKey={(sample) => sample}
        columns={[
          { head: words.sample, cell: (sample) => sample },
          ...all.map((place) => ({
            head: words.place(place + 1),
            cell: (sample: string) => inPlace(sample, place),
            isFigure: true,
          })),
        ]}
      />
      <DataTable
        caption={words.afterTable}
        rows={samples}
        rowKey={(sample) => sample}
        columns={[
          { head: words.first, cell: (sample) => sample },
          ...samples.map((later) => ({
            head: words.next(later),
            cell: (sample: string) => (sample === later ? '' : after(sample, later)),
            isFigure: true,
          })),
        ]}
      />
    </details>
  );
}
