import { OutOfDomain } from '#core/out-of-domain.ts';
import { phrase } from '#core/words/phrase.ts';
import { outOfReach, type Worked, type WrittenStrength } from './worked.ts';

/**
 * In what share two drinks are blended to a wanted strength: the Pearson square.
 *
 * Method: first : second = |target − second| : |first − target|, by volume when strengths are per volume. Leaves out contraction.
 *
 * @param first strength of one @param second of the other, same unit @param target wanted, between the two
 * @param written how sentences write a strength; as a bare number unless said
 * @returns the share of the first in the blend, 0–1, or why not
 * @throws OutOfDomain when a strength is not finite
 * @example pearsonSquare(80, 20, 35) // firstShare 0.25
 */
export function pearsonSquare(
  first: number,
  second: number,
  target: number,
  written: WrittenStrength = String,
): Worked<{ firstShare: number }> {
  for (const [name, value] of Object.entries({ first, second, target })) {
    if (!Number.isFinite(value)) throw new OutOfDomain(name, value, 'a finite number');
  }
  if (target < Math.min(first, second) || target > Math.max(first, second)) {
    return outOfReach(
      phrase`A blend of ${written(first)} and ${written(second)} cannot be ${written(target)}: choose a target between them.`,
    );
  }
  return { ok: true, value: { firstShare: first === second ? 1 : (target - second) / (first - second) } };
}
