import { useAnswer } from '#renderer/app/use-answer.ts';
import { RightnessChart } from '#renderer/charts/rightness-chart.tsx';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

type Rightness = ValueOf<'findings:penalties'>['attributes'][number];

/** Levels where a side is worth changing, in words. */
function LevelLines({ rightness }: { readonly rightness: Rightness }) {
  const speaking = rightness.levels.filter(({ sentences }) => sentences.length > 0);
  if (speaking.length === 0 && rightness.withoutLiking === 0) return null;
  return (
    <ul className="headline-doubts">
      {speaking.flatMap(({ level, sentences }) =>
        sentences.map((sentence) => <li key={`${level}\n${sentence}`}>{words.ofLevel(level, sentence)}</li>),
      )}
      {rightness.withoutLiking === 0 ? null : (
        <li>{words.withoutLiking(rightness.attribute, rightness.withoutLiking, rightness.counts.answers)}</li>
      )}
    </ul>
  );
}

/** Just-about-right scales: was there too little or too much of something, and what did it cost? */
export function RightnessFindings({ trial }: { readonly trial: string }) {
  const penalties = useAnswer('findings:penalties', { trial });
  return (
    <Answer of={penalties}>
      {({ attributes, rule }) =>
        attributes.length === 0 ? null : (
          <section className="section">
            <h2>
              <Explained words={words.rightness} />
            </h2>
            <div className="charts">
              {attributes.map((rightness) => (
                <RightnessChart key={rightness.attribute} rightness={rightness} />
              ))}
            </div>
            {attributes.map((rightness) => (
              <LevelLines key={rightness.attribute} rightness={rightness} />
            ))}
            <p className="soft small">{rule}</p>
          </section>
        )
      }
    </Answer>
  );
}
