import { phrase } from '#core/words/phrase.ts';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import { ExplainedSummary } from '#renderer/parts/term/explained-label.tsx';
import { countOrders, timesWords } from './count-orders.ts';
import './order-balance.css';

const words = {
  summary: phrase`How evenly the serving orders are spread`,
  why: phrase`What is tasted first, and what comes just before, colours what one tastes. So the orders give every sample each place, and each one before it, as evenly as this many tasters allow.`,
  inPlace: (times: string) => phrase`Each sample stands in each place ${times}.`,
  after: (times: string) => phrase`Each comes straight after each other one ${times}.`,
  placeTable: phrase`How often each sample stands in each place`,
  afterTable: phrase`How often a sample comes straight after another`,
  sample: phrase`Sample`,
  place: (place: number) => phrase`Place ${place}`,
  first: phrase`First`,
  next: (later: string) => phrase`then ${later}`,
} as const;

/** Serving orders counted: each sample in each place, and after each other one. */
export function OrderBalance({ orders }: { readonly orders: readonly (readonly string[])[] }) {
  const { samples, places, inPlace, after } = countOrders(orders);
  if (samples.length < 2) return null;
  const all = Array.from({ length: places }, (_, place) => place);
  const pairs = samples.flatMap((one) => samples.filter((other) => other !== one).map((other) => after(one, other)));
  return (
    <details className="order-balance">
      <ExplainedSummary words={words.summary} />
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
