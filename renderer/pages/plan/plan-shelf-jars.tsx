import type { PlanInput } from '#core/trial/plan-input.ts';
import type { TrialPlan } from '#core/trial/plan-trial.ts';
import { phrase } from '#core/words/phrase.ts';
import type { Measures } from '#renderer/format/use-measures.ts';
import { additionWords, coverWords, daysWords, joined } from '#renderer/format/words.ts';
import { type CompositionOf, jarContents } from '#renderer/parts/shelf/jar-contents.ts';
import type { ShelfJar } from '#renderer/parts/shelf/shelf.tsx';
import { words } from './words.ts';

interface Drawn {
  readonly plan: PlanInput;
  readonly planned: TrialPlan;
  readonly compositionOf: CompositionOf;
  readonly measures: Measures;
}

/** The jars as far as they are said, ready to stand on a shelf. A level that is not said yet is a dashed jar of base. */
export function planShelfJars({ plan, planned, compositionOf, measures }: Drawn): ShelfJar[] {
  const longest = Math.max(0, ...planned.formulas.map((formula) => formula?.days ?? 0));
  return plan.levels.flatMap((level, position) => {
    const formula = planned.formulas[position] ?? null;
    const additions = formula?.additions ?? [];
    const contents = jarContents(plan.baseEach_mL, additions, compositionOf);
    const isOver = contents.volume_mL > plan.vessel.capacity_mL;
    const letter = String.fromCharCode(65 + position);
    const isControl = level.name === plan.control;
    const said = [
      additions.length === 0 ? words.plainBase : joined(additions.map((one) => additionWords(one, measures))),
      ...(formula === null ? [words.notSaid] : [daysWords(formula.days)]),
      ...(formula?.cover == null ? [] : [coverWords[formula.cover]]),
      ...(plan.baseEach_mL > 0
        ? [phrase`${measures.volume(contents.volume_mL)} in ${measures.volume(plan.vessel.capacity_mL)}`]
        : []),
      ...(isOver ? [words.runsOver] : []),
    ];
    const days = formula === null ? words.notSaid : daysWords(formula.days);
    // A jar that is called after its days says how full it is instead of saying them twice.
    const second = days === level.name ? (plan.baseEach_mL > 0 ? measures.volume(contents.volume_mL) : '') : days;
    return Array.from({ length: Math.min(plan.replicates, 12) }, (_, copy): ShelfJar => {
      const label = plan.replicates === 1 ? letter : `${letter}${copy + 1}`;
      return {
        key: label,
        vessel: plan.vessel,
        contents,
        additions,
        cover: formula?.cover ?? null,
        label,
        progress: formula === null || longest === 0 ? 0 : Math.max(0, formula.days / longest),
        isGhost: formula === null,
        words: isControl
          ? phrase`Jar ${label}, ${level.name}, the control: ${said.join('; ')}`
          : phrase`Jar ${label}, ${level.name}: ${said.join('; ')}`,
        under: (
          <>
            <span>
              <strong>{level.name}</strong>
              {isControl ? <span className="soft"> {phrase`control`}</span> : null}
            </span>
            {isOver ? <span className="field-fault">{words.runsOver}</span> : <span className="soft">{second}</span>}
          </>
        ),
      };
    });
  });
}
