import { useAnswer } from '#renderer/app/use-answer.ts';
import { figureWords } from '#renderer/charts/figure-words.ts';
import { useMeasures } from '#renderer/format/use-measures.ts';
import { additionWords, coverWords, daysWords, joined } from '#renderer/format/words.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

interface ReportEndingProps {
  readonly trial: ValueOf<'trials:open'>;
  readonly winner: { readonly level: string; readonly mean: number } | null;
}

/** The winner with what was in its jars, and the cautions of the drink. */
export function ReportEnding({ trial, winner }: ReportEndingProps) {
  const measures = useMeasures();
  const level =
    trial.levelsWhole.find(({ name }) => name === winner?.level) ??
    trial.levelsWhole.find(({ isControl }) => isControl);
  const preview = useAnswer(
    'recipes:preview',
    { trial: trial.id, level: level?.name ?? '' },
    { enabled: level !== undefined },
  );
  const formula = level?.formula;
  const parts =
    formula === undefined
      ? []
      : [
          joined(formula.additions.map((one) => additionWords(one, measures))) || words.nothingAdded,
          daysWords(formula.days),
          ...(formula.cover === null ? [] : [coverWords[formula.cover]]),
          ...(formula.temperature_C === null ? [] : [measures.temperature(formula.temperature_C)]),
        ];
  return (
    <>
      <section className="report-winner">
        <h3>{winner === null ? words.noWinner : words.winner(winner.level, figureWords(winner.mean))}</h3>
        {winner === null ? null : <p>{words.formula(parts.join(', '))}</p>}
      </section>
      <section>
        <h3>{words.cautions}</h3>
        {preview.data === undefined || level === undefined ? (
          <p className="report-small">{words.cautionsGeneral}</p>
        ) : (
          <>
            <ul className="report-cautions">
              {preview.data.cautions.map(({ code, message }) => (
                <li key={`${code} ${message}`}>{message}</li>
              ))}
            </ul>
            <p className="report-small">{words.cautionsOf(level.name)}</p>
          </>
        )}
      </section>
    </>
  );
}
