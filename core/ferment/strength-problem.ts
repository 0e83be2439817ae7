import { phrase } from '#core/words/phrase.ts';
import { sucroseSaturation_brix, sugarSolution } from './sugar-solution.ts';

/** The three ways to say a sugar solution's strength. */
export const strengthMembers = ['brix', 'sg', 'sugar_g_per_L'] as const;
export type StrengthMember = (typeof strengthMembers)[number];

/** A syrup may hold a little more than dissolves before it crystallises, not half a degree more. */
const supersaturation_brix = 0.5;

const decimals: Readonly<Record<StrengthMember, number>> = { brix: 1, sg: 4, sugar_g_per_L: 0 };

/**
 * What a strength may be at a temperature: from water to where sugar no longer dissolves.
 *
 * Method: the saturation of sucrose plus half a degree, turned into the asked member.
 *
 * @param member in which the strength is said
 * @param temperature_C 0–80
 * @throws OutOfDomain when the temperature is outside that range
 * @example strengthRange('sg', 20) // [1, 1.3318]
 */
export function strengthRange(member: StrengthMember, temperature_C: number): readonly [least: number, most: number] {
  const brix = Number((sucroseSaturation_brix(temperature_C) + supersaturation_brix).toFixed(1));
  const most = sugarSolution({ brix }, temperature_C)[member];
  return [member === 'sg' ? 1 : 0, Number(most.toFixed(decimals[member]))];
}

/**
 * Why a strength can't be taken, in a sentence of its own unit; `null` when it can.
 *
 * @param member in which the strength is said
 * @param value that strength
 * @param temperature_C of the solution, 0–80
 * @throws OutOfDomain when the temperature is outside that range
 * @example strengthProblem('sg', 1.5, 20) // '1.5 is beyond where sugar still dissolves at 20 °C; permitted: 1 to 1.3318'
 */
export function strengthProblem(member: StrengthMember, value: number, temperature_C: number): string | null {
  const [least, most] = strengthRange(member, temperature_C);
  if (value >= least && value <= most) return null;
  const why =
    value > most
      ? phrase`beyond where sugar still dissolves at ${temperature_C} °C`
      : member === 'sg'
        ? phrase`lighter than water: it holds alcohol and no longer tells its sugar`
        : 'negative';
  return phrase`${value} is ${why}; permitted: ${least} to ${most}`;
}
