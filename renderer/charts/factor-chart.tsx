import { phrase } from '#core/words/phrase.ts';
import { capital } from '#renderer/format/words.ts';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import { attributeColour } from './attribute-colour.ts';
import { ChartFrame } from './chart-frame.tsx';
import { chartKeyWords } from './chart-key.ts';
import { factorChartCsv } from './factor-chart-csv.ts';
import type { FactorChartData } from './factor-chart-data.ts';
import { factorChartFigures } from './factor-chart-figures.ts';
import { figureWords, intervalWords } from './figure-words.ts';
import { FactorDrawing } from './late-drawings.ts';

interface FactorChartProps {
  readonly data: FactorChartData;
  readonly sentence: string | null;
  /** Said below the sentence, smaller. */
  readonly more?: string | null;
  /** What the horizontal axis measures, with its unit: "days", "fruit (g)". */
  readonly axis: string;
  /** The level named as best, where this chart is the one of liking. */
  readonly winner?: string | null;
  /** The chart that leads: wide, its table beside it. */
  readonly isLead?: boolean;
}

/** The means of a factor chart. Letters that two levels share say that they were not told apart. */
function MeansTable({ data, winner }: { readonly data: FactorChartData; readonly winner: string | null }) {
  return (
    <DataTable
      caption={phrase`${data.attribute}: mean and 95 % interval of each level`}
      rows={data.means}
      rowKey={({ level }) => level}
      columns={[
        { head: phrase`Level`, cell: ({ level }) => (level === winner ? `${level} (best)` : level) },
        { head: phrase`Scores`, cell: ({ n }) => n, isFigure: true },
        { head: phrase`Mean`, cell: ({ mean }) => figureWords(mean), isFigure: true },
        { head: phrase`95 % interval`, cell: (row) => intervalWords(row.low, row.high), isFigure: true },
        { head: phrase`Alike`, cell: ({ letters }) => letters ?? '–' },
      ]}
    />
  );
}

function SipsTable({ data }: { readonly data: FactorChartData }) {
  return (
    <DataTable
      caption={phrase`${data.attribute}: your own sips`}
      rows={data.sips}
      rowKey={({ id }) => id}
      columns={[
        { head: phrase`Sip of jar`, cell: ({ jar, level }) => `${jar} (${level})` },
        { head: phrase`Day`, cell: ({ day }) => figureWords(day), isFigure: true },
        { head: phrase`Score`, cell: ({ value }) => figureWords(value), isFigure: true },
      ]}
    />
  );
}

/** One attribute against the factor: every score faint, means with 95 % intervals, curve and band, sips apart, and the tables. */
export function FactorChart({ data, sentence, more = null, axis, winner = null, isLead = false }: FactorChartProps) {
  const colour = attributeColour(data.attribute);
  const [low, high] = data.yDomain;
  const title = capital(data.attribute);
  return (
    <ChartFrame
      title={title}
      scale={phrase`scored ${low} to ${high}`}
      sentence={sentence}
      more={more}
      colour={colour}
      isLead={isLead}
      figures={factorChartFigures(data)}
      csv={() => factorChartCsv([data])}
      chartKey={chartKeyWords([data])}
      table={
        <>
          {data.means.length === 0 ? null : <MeansTable data={data} winner={winner} />}
          {data.sips.length === 0 ? null : <SipsTable data={data} />}
        </>
      }
    >
      <FactorDrawing data={data} axis={axis} colour={colour} winner={winner} />
    </ChartFrame>
  );
}
