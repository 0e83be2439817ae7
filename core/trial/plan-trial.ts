import { phrase } from '#core/words/phrase.ts';
import { jarDates } from './calendar.ts';
import { feasibility, type JarVolumeOf, metricMeasures, type PlanMeasures } from './feasibility.ts';
import type { Addition, Formula } from './formula.ts';
import { levelFormula } from './level-formula.ts';
import { movedFactors } from './moved-factors.ts';
import type { PlanInput, PlanNote, PlanProblem } from './plan-input.ts';
import { planNotes } from './plan-notes.ts';

export interface PlannedJar {
  readonly label: string;
  readonly level: string;
  readonly replicate: number;
  readonly isControl: boolean;
  readonly start: string;
  readonly pull: string;
  readonly base_mL: number;
  readonly additions: readonly Addition[];
}

export interface TrialPlan {
  readonly jars: readonly PlannedJar[];
  readonly feasible: boolean;
  readonly problems: readonly PlanProblem[];
  readonly notes: readonly PlanNote[];
  /** One for each level, in order; null where the level does not say enough. */
  readonly formulas: readonly (Formula | null)[];
}

function levelProblems(plan: PlanInput): PlanProblem[] {
  const problems: PlanProblem[] = [];
  if (plan.levels.length < 2) {
    const message = phrase`One level alone compares nothing. Add a second: what you would do today, and what you wonder about.`;
    problems.push({ code: 'one-level', message, path: ['levels'] });
  }
  const names = plan.levels.map(({ name }) => name.toLowerCase());
  names.forEach((name, position) => {
    if (names.indexOf(name) === position) return;
    const message = phrase`Two levels are called “${plan.levels[position]?.name ?? ''}”. Give each its own name.`;
    problems.push({ code: 'level-name-twice', message, path: ['levels', position, 'name'] });
  });
  if (!plan.levels.some(({ name }) => name === plan.control)) {
    const message =
      plan.control === ''
        ? phrase`No jar is the control yet. Mark the one you would make today: the others are compared with it.`
        : phrase`No level is called “${plan.control}”. Choose as control the level you would make today.`;
    problems.push({ code: 'no-control', message, path: ['control'] });
  }
  return problems;
}

function alikeProblems(plan: PlanInput, formulas: readonly (Formula | null)[]): PlanProblem[] {
  // The order in which additions are written makes no other drink.
  const sorted = (formula: Formula) => ({
    ...formula,
    additions: formula.additions.map((addition) => JSON.stringify(addition)).sort(),
  });
  const texts = formulas.map((formula) => (formula === null ? null : JSON.stringify(sorted(formula))));
  return texts.flatMap((text, position): PlanProblem[] => {
    const twin = text === null ? position : texts.indexOf(text);
    if (twin === position) return [];
    const message = phrase`“${plan.levels[twin]?.name ?? ''}” and “${plan.levels[position]?.name ?? ''}” are the same. Change one, or take one out (for more jars of one level, raise the jars per level).`;
    return [{ code: 'levels-alike', message, path: ['levels', position] }];
  });
}

function jarLabel(position: number, replicate: number, replicates: number): string {
  const letter = String.fromCharCode(65 + position);
  return replicates === 1 ? letter : `${letter}${replicate}`;
}

/**
 * Plans the jars of a side-by-side trial: one factor moves, all else is held, a control is always there.
 *
 * Method: each level's formula is what is held with the moved factor put in; dates follow the calendar; every reason why
 * the plan can't work is a sentence at its field. Leaves out what the jars will taste like.
 *
 * @param plan the question and everything around it; levels 1–24, replicates 1–12
 * @param volumeOf how much a jar holds once its additions are in, in mL
 * @param measures how the sentences write quantities; in mL and °C unless said
 * @returns jars in the order of the levels (those whose formula is known), problems, and notes when there are no problems
 */
export function planTrial(plan: PlanInput, volumeOf: JarVolumeOf, measures: PlanMeasures = metricMeasures): TrialPlan {
  const found = plan.levels.map((level, position) => levelFormula(plan, level, position));
  const formulas = found.map(({ formula }) => formula);
  const missing = found.flatMap(({ problems }) => problems);
  const problems = [
    ...levelProblems(plan),
    ...missing.filter(({ path }, at) => missing.findIndex((other) => String(other.path) === String(path)) === at),
    ...movedFactors(plan, formulas),
    ...alikeProblems(plan, formulas),
    ...feasibility(plan, formulas, volumeOf, measures),
  ];
  const known = formulas.filter((formula) => formula !== null);
  const longest = Math.max(0, ...known.map(({ days }) => days));
  const jars = formulas.flatMap((formula, position): PlannedJar[] => {
    const level = plan.levels[position];
    if (formula === null || level === undefined || !(Math.abs(longest) <= 1e5 && Math.abs(formula.days) <= 1e5))
      return [];
    return Array.from({ length: plan.replicates }, (_, index) => ({
      label: jarLabel(position, index + 1, plan.replicates),
      level: level.name,
      replicate: index + 1,
      isControl: level.name === plan.control,
      ...jarDates(plan.calendar, plan.start, formula.days, longest),
      base_mL: plan.baseEach_mL,
      additions: formula.additions,
    }));
  });
  const feasible = problems.length === 0;
  const labels = jars.map(({ label }) => label);
  return { jars, feasible, problems, notes: feasible ? planNotes(plan, known, labels, volumeOf) : [], formulas };
}
