import { phrase } from '#core/words/phrase.ts';
import { type Addition, type Formula, ingredientName, totalMass_g } from './formula.ts';
import type { LevelInput, PlanInput, PlanProblem } from './plan-input.ts';

// One factor moves, all else is held: this file finds the plans that move a second one.

/** Weights that differ by less than this share count as equal: a kitchen scale is no better. */
const sameWeight = 0.01;

const membersOf: Readonly<Record<PlanInput['factor'], readonly (keyof LevelInput)[]>> = {
  days: ['value'],
  temperature: ['value'],
  amount: ['value', 'additions'],
  fruit: ['additions', 'value'],
  state: ['additions', 'state', 'value'],
  cover: ['cover', 'value'],
  formula: ['additions', 'days', 'cover', 'temperature_C', 'value'],
};

const memberWords: Partial<Record<keyof LevelInput, string>> = {
  get additions() {
    return phrase`the additions`;
  },
  get state() {
    return phrase`fresh or frozen`;
  },
  get days() {
    return phrase`the days`;
  },
  get cover() {
    return phrase`the cover`;
  },
  get temperature_C() {
    return phrase`the temperature`;
  },
};

function differ(a: number, b: number): boolean {
  return Math.abs(a - b) > sameWeight * Math.max(a, b);
}

function recipeOf(additions: readonly Addition[]): string {
  const total = totalMass_g(additions);
  return additions
    .map(
      ({ ingredient, mass_g, state }) => `${ingredientName(ingredient)}/${state}/${Math.round((mass_g / total) * 50)}`,
    )
    .sort()
    .join('+');
}

/** Which fruit, whatever its state: food tables write "strawberries, frozen" beside "strawberries". */
function fruitOf(additions: readonly Addition[]): string {
  const plain = additions.map((addition) => ({
    ...addition,
    ingredient: ingredientName(addition.ingredient).split(',')[0]?.trim().toLowerCase() ?? '',
    state: addition.state === 'liquid' ? ('liquid' as const) : ('fresh' as const),
  }));
  return recipeOf(plain);
}

function solidState(additions: readonly Addition[]): string {
  return [...new Set(additions.map(({ state }) => state).filter((state) => state !== 'liquid'))].sort().join('+');
}

/** What else moves between the additions of two levels, in words; null when nothing does. */
function alsoMoves(factor: PlanInput['factor'], a: readonly Addition[], b: readonly Addition[]): string | null {
  if (a.length === 0 || b.length === 0) return null;
  if (factor === 'amount') return recipeOf(a) === recipeOf(b) ? null : phrase`what is added, not only how much`;
  if (factor === 'fruit') {
    if (differ(totalMass_g(a), totalMass_g(b))) return phrase`the amount`;
    const [left, right] = [solidState(a), solidState(b)];
    return left !== '' && right !== '' && left !== right ? phrase`fresh against frozen` : null;
  }
  if (factor === 'state') {
    if (differ(totalMass_g(a), totalMass_g(b))) return phrase`the amount`;
    return fruitOf(a) === fruitOf(b) ? null : phrase`the fruit`;
  }
  return null;
}

/**
 * The levels that move more than the factor asked about.
 *
 * @param formulas one for each level, null where it could not be known
 */
export function movedFactors(plan: PlanInput, formulas: readonly (Formula | null)[]): PlanProblem[] {
  const problems: PlanProblem[] = [];
  plan.levels.forEach((level, position) => {
    for (const member of Object.keys(memberWords) as (keyof LevelInput)[]) {
      if (level[member] === undefined || membersOf[plan.factor].includes(member)) continue;
      problems.push({
        code: 'two-factors-moved',
        message: phrase`“${level.name}” also moves ${memberWords[member] ?? ''}. Take it out of the level, or ask about the whole formula.`,
        path: ['levels', position, member],
      });
    }
    const formula = formulas[position];
    if (formula == null) return;
    for (const [earlier, other] of formulas.slice(0, position).entries()) {
      const also = other === null ? null : alsoMoves(plan.factor, other.additions, formula.additions);
      if (also === null) continue;
      problems.push({
        code: 'two-factors-moved',
        message: phrase`Between “${plan.levels[earlier]?.name ?? ''}” and “${level.name}” ${also} moves too: nobody could tell which did it. Make it equal, or ask about the whole formula.`,
        path: ['levels', position, 'additions'],
      });
      return;
    }
  });
  return problems;
}
