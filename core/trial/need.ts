import { phrase } from '#core/words/phrase.ts';

/** What a kitchen can want of its maker. */
export const needKinds = ['start', 'look', 'stir', 'pull', 'taste', 'strain', 'feed'] as const;
export type NeedKind = (typeof needKinds)[number];

/** A first ferment takes this long when nobody planned it. Common practice, no source. */
export const usualFirstFerment_hours = 48;

/** A culture that rests cold is refreshed this often when nobody says otherwise. Common practice, no source. */
export const usualRefresh_days = 14;

/** While a culture is woken it is fed this often. Common practice, no source. */
export const revivalFeed_days = 1;

/** Why a need stands at its time when no plan says so. */
export const needBasis = {
  get look() {
    return phrase`A look a day while it stands: common practice, no source.`;
  },
  get stir() {
    return phrase`Stirred daily, as the plan holds: common practice, no source.`;
  },
  get strain() {
    return phrase`Two days for a first ferment, as none were planned: common practice, no source.`;
  },
  get feed() {
    return phrase`About every two weeks while it rests cold: common practice, no source.`;
  },
  get revive() {
    return phrase`Fed daily until it is lively again: common practice, no source.`;
  },
} as const;

/**
 * Whether a place where a culture rests is a cold one, as people call it.
 *
 * @param rests the owner's own words, `null` when nobody said
 * @example restsCold('fridge door') // true
 */
export function restsCold(rests: string | null): boolean {
  return rests !== null && /fridge|refriger|cold|cool|cellar|larder/i.test(rests);
}
