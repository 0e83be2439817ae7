import { useId } from 'react';
import { phrase } from '#core/words/phrase.ts';
import { figureWords } from '#renderer/charts/figure-words.ts';
import { joined } from '#renderer/format/words.ts';
import { shareWords } from '#renderer/parts/judgement/judgement-words.ts';
import { Tape } from '#renderer/parts/tape/tape.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

type Trial = ValueOf<'trials:open'>;
type Findings = ValueOf<'findings:read'>;
type Rankings = ValueOf<'findings:places'>['rankings'];
type Sip = ValueOf<'sips:byTrial'>['sips'][number];

interface LevelChoiceProps {
  readonly trial: Trial;
  readonly findings: Findings;
  readonly rankings: Rankings;
  /** The level that comes closest to what was wished for, where wishes were said. */
  readonly wished: ValueOf<'profiles:judge'>['levels'][number] | null;
  readonly sips: readonly Sip[];
  readonly chosen: string | null;
  readonly onChoose: (level: string) => void;
}

/** Why this level stands chosen, or why none does. */
function reasonWords(props: Omit<LevelChoiceProps, 'chosen' | 'onChoose'>): string {
  const { trial, findings, rankings, wished, sips } = props;
  if (wished !== null) return words.closest(wished.level, shareWords(wished.winShare));
  const winner = findings.headline?.winner ?? null;
  if (winner !== null) {
    const sureness = findings.sentences.find(({ attribute }) => attribute === findings.liking)?.sureness ?? 'unknown';
    const scale = findings.liking === null ? undefined : findings.scales[findings.liking];
    const mean = `${figureWords(winner.mean)}${scale === undefined ? '' : phrase` on the scale from ${scale[0]} to ${scale[1]}`}`;
    return words.chosenByPanel(winner.level, mean, sureness);
  }
  const ranking = rankings.at(-1);
  if (ranking !== undefined) return words.ranked(ranking.sentence);
  if (findings.scores.length > 0) return words.panelUnsure;
  if (trial.tastings > 0) return words.notClosed;
  return sips.length > 0 ? words.sipsOnly : words.nothing;
}

/** The trial's levels to choose from, each with what is known of it. */
export function LevelChoice(props: LevelChoiceProps) {
  const { trial, findings, rankings, sips, chosen, onChoose } = props;
  const group = useId();
  const liking = findings.analysis?.attributes.find(({ attribute }) => attribute === findings.liking);
  return (
    <fieldset className="promote-levels">
      <legend>
        <h2>
          <Explained words={words.which} />
        </h2>
      </legend>
      <p>{reasonWords(props)}</p>
      {trial.levelsWhole.map(({ id, name, isControl }) => {
        const jars = trial.jarsWhole.filter(
          (jar) => jar.level === id && jar.startedAt !== null && jar.state !== 'discarded',
        );
        const mean = liking?.means.find(({ sample }) => sample === name)?.mean ?? null;
        const place = rankings.at(-1)?.places.find(({ sample }) => sample === name)?.mean ?? null;
        const sip =
          sips.findLast((one) => one.liking !== null && jars.some((jar) => jar.id === one.jar))?.liking ?? null;
        const known = [
          ...(isControl ? [words.control] : []),
          jars.length === 0 ? words.noJar : words.jars(joined(jars.map(({ label }) => label)), jars.length),
          mean !== null
            ? words.liking(figureWords(mean))
            : place !== null
              ? words.placed(figureWords(place))
              : sip !== null
                ? words.sipped(figureWords(sip))
                : words.notTasted,
        ];
        return (
          <label key={id} className="promote-level">
            <input
              type="radio"
              name={group}
              checked={chosen === id}
              disabled={jars.length === 0}
              onChange={() => onChoose(id)}
            />
            <Tape>{name}</Tape>
            <span className="soft">{known.join(', ')}</span>
          </label>
        );
      })}
    </fieldset>
  );
}
