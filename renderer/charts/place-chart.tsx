import { phrase } from '#core/words/phrase.ts';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { tabbedText } from '#shared/csv-text.ts';
import { ChartFrame } from './chart-frame.tsx';
import { figureWords } from './figure-words.ts';
import { PlaceDrawing } from './late-drawings.ts';
import { ordinal, placeChartCsv, placeChartData } from './place-chart-data.ts';

type Ranking = ValueOf<'findings:places'>['rankings'][number];

const words = {
  scale: (counted: number) =>
    counted === 1 ? phrase`put in order by one taster` : phrase`put in order by ${counted} tasters`,
  caption: (name: string) => phrase`${name}: how often each level stood in each place`,
  key: phrase`Rounds: how often a level stood in a place. Bars: its mean place.`,
} as const;

/** A ranked tasting: rounds for how often, bars for mean places, and the table. */
export function PlaceChart({ ranking }: { readonly ranking: Ranking }) {
  const { name, places, samples, counted } = ranking;
  const data = placeChartData(ranking);
  const figures = tabbedText([
    [phrase`Level`, phrase`Mean place`],
    ...places.map(({ sample, mean }) => [sample, figureWords(mean)]),
  ]);
  return (
    <ChartFrame
      title={name}
      scale={words.scale(counted)}
      sentence={null}
      more={words.key}
      colour="var(--chart-liking)"
      isLead
      figures={figures}
      csv={() => placeChartCsv(ranking)}
      chartKey={words.key}
      table={
        <DataTable
          caption={words.caption(name)}
          rows={[...places].sort((one, other) => one.mean - other.mean)}
          rowKey={({ sample }) => sample}
          columns={[
            { head: phrase`Level`, cell: ({ sample }) => sample },
            ...places.map((_, index) => ({
              head: ordinal(index + 1),
              cell: ({ counts }: Ranking['places'][number]) => counts[index] ?? 0,
              isFigure: true,
            })),
            { head: phrase`Mean place`, cell: ({ mean }) => figureWords(mean), isFigure: true },
            { head: phrase`Alike`, cell: (row) => samples.find(({ sample }) => sample === row.sample)?.letters ?? '–' },
          ]}
        />
      }
    >
      <PlaceDrawing data={data} />
    </ChartFrame>
  );
}
