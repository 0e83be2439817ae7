import { seededRandom } from '#core/numeric/seeded-random.ts';
import { OutOfDomain } from '#core/out-of-domain.ts';

/** A code tells nothing when its digits all differ, do not run up or down by one, and it is no round number. */
function tellsNothing(code: number): boolean {
  const [a = 0, b = 0, c = 0] = Array.from(String(code), Number);
  if (a === b || b === c || a === c || c === 0) return false;
  return !((b - a === 1 && c - b === 1) || (b - a === -1 && c - b === -1));
}

/** Every code that may stand on a cup, in rising order: three digits, none repeated, none telling. */
export const usableBlindCodes: readonly string[] = Array.from({ length: 900 }, (_, index) => index + 100)
  .filter(tellsNothing)
  .map(String);

/**
 * Draws three-digit blind codes.
 *
 * Method: codes never used come first, then those used longest ago; among equals the seed decides. No code that leans a taster
 * (100, 111, 123, 999 and their like) is ever drawn, and none that is in use now.
 *
 * @param wanted how many codes, at least 0
 * @param options `seed`; `inUse`: codes on open tastings; `lastUsed`: a rank for each code used before, larger for more recent
 * @returns so many different codes
 * @throws OutOfDomain when fewer codes are free than wanted
 * Source: three random digits are common practice, no source.
 * @example blindCodes(3, { seed: 7 }).length // 3
 */
export function blindCodes(
  wanted: number,
  options: {
    readonly seed: number;
    readonly inUse?: readonly string[];
    readonly lastUsed?: Readonly<Record<string, number>>;
  },
): string[] {
  const taken = new Set(options.inUse ?? []);
  const ranks = new Map(Object.entries(options.lastUsed ?? {}));
  const free = seededRandom(options.seed)
    .shuffled(usableBlindCodes)
    .filter((code) => !taken.has(code));
  if (!Number.isInteger(wanted) || wanted < 0 || wanted > free.length) {
    throw new OutOfDomain('wanted', wanted, `whole numbers from 0 to the ${free.length} codes that are free`);
  }
  const age = (code: string): number => ranks.get(code) ?? Number.NEGATIVE_INFINITY;
  return free
    .map((code, draw) => ({ code, draw }))
    .sort((one, other) => (age(one.code) === age(other.code) ? one.draw - other.draw : age(one.code) - age(other.code)))
    .slice(0, wanted)
    .map(({ code }) => code);
}
