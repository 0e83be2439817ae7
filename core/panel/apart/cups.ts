import { OutOfDomain } from '#core/out-of-domain.ts';
import type { DiscriminationMethod } from './thurstone.ts';

/** How many cups a taster may choose from; a duo-trio's reference is not one of them. */
export function cupsToChoose(method: DiscriminationMethod): number {
  return method === 'triangle' ? 3 : 2;
}

/** The cups to choose from, without a duo-trio's reference. @example servedCups('A:BA') // 'BA' */
export function servedCups(cups: string): string {
  return cups.slice(cups.indexOf(':') + 1);
}

/**
 * Whether a choice counts as right.
 *
 * Triangle: the cup that differs from both others. Duo-trio: the cup that holds the reference's drink. Paired: the cup of the
 * expected drink; two-sided, where none is expected, the cup of A (the analysis counts whichever was chosen more often).
 *
 * @param cups as `presentationOrders` writes them, such as ABB or A:BA
 * @param chosen place of the chosen cup, from 1; a reference is not counted
 * @param expected only for the one-sided paired test
 * @throws OutOfDomain when there is no such cup
 * @example isRight('triangle', 'ABB', 1, null) // true
 */
export function isRight(
  method: DiscriminationMethod,
  cups: string,
  chosen: number,
  expected: 'A' | 'B' | null,
): boolean {
  const served = servedCups(cups);
  const cup = served[chosen - 1];
  if (cup === undefined) throw new OutOfDomain('chosen', chosen, `1 to ${served.length}`);
  if (method === 'triangle') return [...served].filter((each) => each === cup).length === 1;
  if (method === 'duo-trio') return cup === cups[0];
  return cup === (expected ?? 'A');
}
