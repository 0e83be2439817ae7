import type { Attribute } from './tasting-names.ts';

/** Why a score does not fit its attribute's scale, or null when it does. */
export function scaleProblem(
  attribute: Attribute,
  score: number,
): { code: 'off-scale' | 'not-whole'; message: string } | null {
  const { name, kind, low, high } = attribute;
  const asked = { scale: 'is scored', 'just-about-right': 'is answered', place: 'is given' }[kind];
  if (score < low || score > high) {
    return { code: 'off-scale', message: `${name} ${asked} from ${low} to ${high}; ${score} is outside.` };
  }
  if (kind !== 'scale' && !Number.isInteger(score)) {
    return {
      code: 'not-whole',
      message: `${name} ${asked} in whole steps from ${low} to ${high}; ${score} is between two.`,
    };
  }
  return null;
}
