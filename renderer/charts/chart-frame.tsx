import type { ReactNode } from 'react';
import './chart-frame.css';

interface ChartFrameProps {
  readonly title: string;
  /** The scale and the unit, small beside the title. */
  readonly scale: string;
  /** What the chart says, in one sentence. Comes first. */
  readonly sentence: string | null;
  readonly colour: string;
  readonly children: ReactNode;
  /** The same figures as a table. */
  readonly table: ReactNode;
}

/** Every chart stands in this frame: sentence, drawing, and its twin as a table. */
export function ChartFrame({ title, scale, sentence, colour, children, table }: ChartFrameProps) {
  return (
    <figure className="chart" style={{ '--chart': colour }}>
      <figcaption>
        <h3>
          <span className="chart-swatch" aria-hidden="true" />
          {title} <span className="soft small">{scale}</span>
        </h3>
        {sentence === null ? null : <p className="chart-sentence">{sentence}</p>}
      </figcaption>
      <div className="chart-drawing">{children}</div>
      <details>
        <summary>{title} as a table</summary>
        {table}
      </details>
    </figure>
  );
}
