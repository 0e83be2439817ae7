import { blindCodes, usableBlindCodes } from '#core/panel/serving/blind-codes.ts';
import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { openCupCodes } from '#store/rows/discriminations.ts';
import { blindCodeUse } from '#store/rows/tastings.ts';

/**
 * Blind codes that stand on no cup of an open tasting or test, least recently used first.
 *
 * @param said names that a code must not look like: jar labels and levels
 * @throws Failure `refused` when too few are free
 */
export function freeCodes(kitchen: Kitchen, wanted: number, seed: number, said: readonly string[] = []): string[] {
  const { inUse, lastUsed } = blindCodeUse(kitchen.read);
  const taken = new Set([...inUse, ...openCupCodes(kitchen.read), ...said]);
  const free = usableBlindCodes.filter((code) => !taken.has(code)).length;
  if (free < wanted) {
    throw new Failure(
      'refused',
      phrase`Only ${free} blind codes are free; close a tasting that is still open, and try again.`,
      ['samples'],
    );
  }
  return blindCodes(wanted, { seed, inUse: [...taken], lastUsed });
}
