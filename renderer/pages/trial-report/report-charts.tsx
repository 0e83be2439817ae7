import { phrase } from '#core/words/phrase.ts';
import { attributeColour } from '#renderer/charts/attribute-colour.ts';
import type { FactorChartData } from '#renderer/charts/factor-chart-data.ts';
import { FactorDrawing } from '#renderer/charts/factor-drawing.tsx';
import { glued } from '#renderer/format/glued.ts';
import { capital } from '#renderer/format/words.ts';

interface ReportChartProps {
  readonly data: FactorChartData;
  readonly axis: string;
  readonly winner: string | null;
  readonly sentence: string | null;
  readonly isLead: boolean;
}

/** A chart of the report: drawing and sentence, without table and without buttons. */
export function ReportChart({ data, axis, winner, sentence, isLead }: ReportChartProps) {
  const colour = attributeColour(data.attribute);
  const [low, high] = data.yDomain;
  return (
    <figure className={isLead ? 'report-chart is-lead' : 'report-chart'}>
      <figcaption>
        <h3>
          {capital(data.attribute)} <small>{phrase`${low} to ${high}`}</small>
        </h3>
        {sentence === null ? null : <p>{glued(sentence)}</p>}
      </figcaption>
      <div className="report-drawing chart">
        <FactorDrawing data={data} axis={axis} colour={colour} winner={winner} isOnPaper />
      </div>
    </figure>
  );
}
