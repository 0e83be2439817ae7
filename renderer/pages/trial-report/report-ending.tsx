import { figureWords } from '#renderer/charts/figure-words.ts';
import { useMeasures } from '#renderer/format/use-measures.ts';
import { additionWords, coverWords, daysWords, joined } from '#renderer/format/words.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

interface ReportEndingProps {
  readonly winner: { readonly level: string; readonly mean: number } | null;
  /** The winner's level; where there is none, the control's. */
  readonly level: ValueOf<'trials:open'>['levelsWhole'][number] | undefined;
  /** Those of that level's drink; null where they can't be told. */
  readonly cautions: ValueOf<'recipes:preview'>['cautions'] | null;
}

/** The winner with what was in its jars, and the cautions of the drink. */
export function ReportEnding({ winner, level, cautions }: ReportEndingProps) {
  const measures = useMeasures();
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
      <section>
        <h3>{winner === null ? words.noWinner : words.winner(winner.level, figureWords(winner.mean))}</h3>
        {winner === null ? null : <p>{words.formula(parts.join('; '))}</p>}
      </section>
      <section>
        <h3>{words.cautions}</h3>
        {cautions === null || level === undefined ? (
          <p className="report-small">{words.cautionsGeneral}</p>
        ) : (
          <>
            <ul className="report-cautions">
              {cautions.map(({ code, message }) => (
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
