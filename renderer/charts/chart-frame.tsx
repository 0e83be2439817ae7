import { type ReactNode, Suspense, useRef } from 'react';
import { phrase } from '#core/words/phrase.ts';
import { explained } from '#renderer/parts/term/explained.tsx';
import { TakeChart } from './take-chart.tsx';
import './chart-frame.css';

interface ChartFrameProps {
  readonly title: string;
  /** The scale and the unit, small beside the title. */
  readonly scale: string;
  /** What the chart says, in one sentence. Comes first. */
  readonly sentence: string | null;
  /** A second, smaller one. */
  readonly more: string | null;
  readonly colour: string;
  /** Wide, with the table beside the drawing. */
  readonly isLead: boolean;
  readonly children: ReactNode;
  /** The same figures as a table. */
  readonly table: ReactNode;
  /** The means as tab-separated text, for the clipboard. */
  readonly figures: string;
  /** Every mark as CSV. */
  readonly csv: () => string;
  /** What the marks mean, for the picture. */
  readonly chartKey: string;
  /** A drawing of so many lanes is as high as they need. */
  readonly lanes?: number | undefined;
  /** What the marks mean, where the drawing itself can't hold it. */
  readonly below?: ReactNode;
}

/** Every chart stands in this frame: sentence, drawing, and its twin as a table. */
export function ChartFrame(props: ChartFrameProps) {
  const {
    title,
    scale,
    sentence,
    more,
    colour,
    isLead,
    children,
    table,
    figures,
    csv,
    chartKey,
    lanes,
    below = null,
  } = props;
  const drawing = useRef<HTMLDivElement>(null);
  return (
    <figure
      className={`chart${isLead ? ' is-lead' : ''}${lanes === undefined ? '' : ' has-lanes'}`}
      style={{ '--chart': colour, '--lanes': lanes }}
    >
      <figcaption>
        <h3>
          <span className="chart-swatch" aria-hidden="true" />
          {title} <span className="soft small">{scale}</span>
        </h3>
        {sentence === null ? null : <p className="chart-sentence">{explained(sentence)}</p>}
        {more === null ? null : <p className="soft small">{explained(more)}</p>}
      </figcaption>
      <div ref={drawing} className="chart-drawing">
        <Suspense fallback={null}>{children}</Suspense>
      </div>
      <div className="chart-twin">
        {below}
        {isLead ? (
          table
        ) : (
          <details>
            <summary>{phrase`${title} as a table`}</summary>
            {table}
          </details>
        )}
        <TakeChart picture={{ title, sentence, key: chartKey }} figures={figures} csv={csv} drawing={drawing} />
      </div>
    </figure>
  );
}
