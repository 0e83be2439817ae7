import { useState } from 'react';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { TimelineChart } from '#renderer/charts/timeline-chart.tsx';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { sightingWords } from '#renderer/parts/jar-work/words.ts';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { words } from './words.ts';

/** More lanes than this are shown on a press. */
const mostLanes = 16;

/** What happened in a trial and when, from its first start to its last tasting. */
export function TrialTimeline({ trial, now }: { readonly trial: string; readonly now: number }) {
  const timeline = useAnswer('trials:timeline', { trial });
  const [isOpen, setIsOpen] = useState(false);
  return (
    <section className="section" aria-label={words.timeline}>
      <h2>
        <Explained words={words.timeline} />
      </h2>
      <Answer of={timeline}>
        {(value) => {
          const chart = <TimelineChart timeline={value} now={now} nameOf={(what) => sightingWords[what]} />;
          if (value.jars.length <= mostLanes) return chart;
          return (
            // A folded chart has no size to be drawn in.
            <details onToggle={({ currentTarget }) => setIsOpen(currentTarget.open)}>
              <summary>{words.allLanes(value.jars.length)}</summary>
              {isOpen ? chart : null}
            </details>
          );
        }}
      </Answer>
    </section>
  );
}
