import { type Parsed, parseQuantity, type QuantityProblem } from '#core/units/parse-quantity.ts';
import { type Unit, units } from '#core/units/unit-table.ts';
import { phrase } from '#core/words/phrase.ts';
import { type StrengthMember, strengthProblem } from './strength-problem.ts';
import { sugarSolution } from './sugar-solution.ts';

const members: Readonly<Record<string, StrengthMember>> = { brix: 'brix', sg: 'sg', concentration: 'sugar_g_per_L' };

/** Only a hydrometer is read to three places around one. */
const bareGravity = /^\s*1[.,][0-3]\d\d\s*$/;
const gravityFirst = /^\s*sg\s*([\d.,]+)\s*$/i;

/**
 * Reads how sweet something is, in any way it is measured: "60 g/L", "8 oz/gal", "6 brix", "1.024".
 *
 * Method: the unit says which; three places around one are a specific gravity; another bare number takes `assumed`. °Bx and SG are turned
 * into grams of sucrose per litre at 20 °C. Leaves out acids and alcohol: in a ferment °Bx and SG no longer tell the sugar.
 *
 * @param text what somebody typed
 * @param assumed the unit of a bare number, shown beside the field
 * @returns grams per litre, from nothing to where sugar no longer dissolves at 20 °C, or a sentence
 * @example parseStrength('10 brix') // 103.81
 */
export function parseStrength(text: string, assumed: Unit): Parsed<number> {
  const gravity = bareGravity.test(text) ? text : gravityFirst.exec(text)?.[1];
  const read = parseQuantity(gravity ?? text, undefined, gravity === undefined ? assumed : units.sg);
  if (!read.ok) return read;
  const { unit, stored, rest } = read.value;
  const member = members[unit.dimension];
  if (member === undefined) {
    return refused(
      'wrong-kind',
      phrase`${unit.symbol || phrase`A count`} does not say how sweet; write g/L, brix or SG.`,
    );
  }
  if (rest !== '') return refused('unit-unknown', phrase`“${rest}” is too much here.`);
  const problem = strengthProblem(member, stored, 20);
  if (problem !== null) return refused('out-of-range', `${problem} ${unit.symbol === 'oz/gal' ? 'g/L' : unit.symbol}.`);
  if (member === 'sugar_g_per_L') return { ok: true, value: stored };
  const known = member === 'brix' ? { brix: stored } : { sg: stored };
  return { ok: true, value: sugarSolution(known).sugar_g_per_L };
}

function refused(code: QuantityProblem['code'], message: string): Parsed<never> {
  return { ok: false, problem: { code, message } };
}
