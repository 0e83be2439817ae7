import { type ReactNode, useRef } from 'react';
import { CopyChart } from './copy-chart.tsx';
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
  /** The same figures as tab-separated text, for the clipboard. */
  readonly figures: string;
}

/** Every chart stands in this frame: sentence, drawing, and its twin as a table. */
export function ChartFrame({ title, scale, sentence, colour, children, table, figures }: ChartFrameProps) {
  const drawing = useRef<HTMLDivElement>(null);
  return (
    <figure className="chart" style={{ '--chart': colour }}>
      <figcaption>
        <h3>
          <span className="chart-swatch" aria-hidden="true" />
          {title} <span className="soft small">{scale}</span>
        </h3>
        {sentence === null ? null : <p className="chart-sentence">{sentence}</p>}
      </figcaption>
      <div ref={drawing} className="chart-drawing">
        {children}
      </div>
      <div>
        <CopyChart title={title} figures={figures} drawing={drawing} />
        <details>
          <summary>{title} as a table</summary>
          {table}
        </details>
      </div>
    </figure>
  );
}
