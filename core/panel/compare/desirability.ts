import { OutOfDomain } from '#core/out-of-domain.ts';

/** What is wanted of an attribute. `weight` bends the way: 1 straight, above 1 demanding, below 1 lenient. */
export interface AttributeGoal {
  readonly goal: 'more' | 'less' | 'target';
  /** At or below this: not acceptable (for `less`: fully wanted). */
  readonly low: number;
  /** At or above this: fully wanted (for `less` and `target`: not acceptable). */
  readonly high: number;
  /** Only for `target`: what is wanted, between low and high. */
  readonly target?: number | undefined;
  readonly weight?: number | undefined;
  /** How much the attribute counts in the whole, above 0; 1 unless given. */
  readonly importance?: number | undefined;
}

/**
 * How well one value meets a goal.
 *
 * Method: 0 where not acceptable, 1 where fully wanted, a power of the way between.
 *
 * @param value the attribute's mean
 * @param goal low below high
 * @returns 0 to 1
 * @throws OutOfDomain when the goal's ends are out of order
 * Source: Derringer & Suich, Journal of Quality Technology 12 (1980) 214.
 * @example desirability(7, { goal: 'more', low: 4, high: 8 }) // 0.75
 */
export function desirability(value: number, goal: AttributeGoal): number {
  const { low, high } = goal;
  if (!(low < high)) throw new OutOfDomain('goal', `${low} to ${high}`, 'low below high');
  const weight = goal.weight ?? 1;
  if (!(weight > 0)) throw new OutOfDomain('weight', weight, 'above 0');
  const way = (part: number): number => Math.min(1, Math.max(0, part)) ** weight;
  if (goal.goal === 'more') return way((value - low) / (high - low));
  if (goal.goal === 'less') return way((high - value) / (high - low));
  const target = goal.target ?? (low + high) / 2;
  if (!(target > low && target < high)) throw new OutOfDomain('target', target, `between ${low} and ${high}`);
  return value <= target ? way((value - low) / (target - low)) : way((high - value) / (high - target));
}

/**
 * Desirability of a whole profile: the weighted geometric mean, so that one attribute that will not do spoils it all.
 *
 * @param values one a goal
 * @param goals at least one
 * @returns 0 to 1
 * @throws OutOfDomain when the lists differ in length or are empty
 * Source: as desirability; importance as in G. Derringer, Quality Progress 27(6) (1994) 51.
 */
export function profileDesirability(values: readonly number[], goals: readonly AttributeGoal[]): number {
  if (values.length !== goals.length || goals.length === 0)
    throw new OutOfDomain('values', values.length, `${goals.length} values`);
  let log = 0;
  let sum = 0;
  goals.forEach((goal, index) => {
    const importance = goal.importance ?? 1;
    if (!(importance > 0)) throw new OutOfDomain('importance', importance, 'above 0');
    const d = desirability(values[index] ?? 0, goal);
    log += importance * (d === 0 ? Number.NEGATIVE_INFINITY : Math.log(d));
    sum += importance;
  });
  return Math.exp(log / sum);
}
