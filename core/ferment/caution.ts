import { phrase } from '#core/words/phrase.ts';

/** Every caution the program can give. */
export const cautionCodes = [
  'vessel-unrated',
  'pressure-above-rating',
  'pressure-sparkling',
  'pressure-glass-limit',
  'overfull',
  'headspace-froth',
  'mould',
  'base-mould',
  'cold-start',
  'alcohol-line',
  'alcohol-bound',
  'alcohol-unknown',
  'sugar-at-closing',
  'preserved-juice',
  'honey-infants',
  'allergens',
  'live-drink',
  'ph-measure',
  'ph-high',
  'ph-rising',
  'ph-guidance',
  'refractometer-alcohol',
  'hydrometer-alcohol',
  'caustic-titrant',
  'chlorinated-water',
  'selling',
] as const;
export type CautionCode = (typeof cautionCodes)[number];

/** A usual caution, in plain words, with what it rests on. It never says that something is safe. */
export interface Caution {
  readonly code: CautionCode;
  readonly message: string;
  /** The document behind it, or "common practice, no source". */
  readonly basis: string;
}

export function commonPractice(): string {
  return phrase`Common practice, no source`;
}

export function caution(code: CautionCode, message: string, basis: string): Caution {
  return { code, message, basis };
}
