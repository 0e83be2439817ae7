import { phrase } from '#core/words/phrase.ts';
import type { Attribute } from './tasting-names.ts';

/** Why a score does not fit its attribute's scale, or null when it does. */
export function scaleProblem(
  attribute: Attribute,
  score: number,
): { code: 'off-scale' | 'not-whole'; message: string } | null {
  const { name, kind, low, high } = attribute;
  const asked = { scale: phrase`is scored`, 'just-about-right': phrase`is answered`, place: phrase`is given` }[kind];
  if (score < low || score > high) {
    return { code: 'off-scale', message: phrase`${name} ${asked} from ${low} to ${high}; ${score} is outside.` };
  }
  if (kind !== 'scale' && !Number.isInteger(score)) {
    return {
      code: 'not-whole',
      message: phrase`${name} ${asked} in whole steps from ${low} to ${high}; ${score} is between two.`,
    };
  }
  return null;
}
