import { OutOfDomain } from '#core/out-of-domain.ts';

/** A repeatable source of chance. The same seed gives the same sequence on every machine. */
export interface SeededRandom {
  /** Uniform on [0, 1) with 32 random bits. */
  uniform(): number;
  /** Uniform whole number from 0 to `limit` − 1, without modulo bias. */
  below(limit: number): number;
  /** A shuffled copy (Fisher–Yates: every order equally likely). */
  shuffled<Item>(items: readonly Item[]): Item[];
}

/**
 * Seeded random numbers by the "small fast counting" generator sfc32.
 *
 * Method: three 32-bit words of state and a counter; the seed fills the state and twelve rounds mix it.
 * Not for secrets: anyone who knows the seed knows the sequence.
 *
 * @param seed whole number, 0 to 4294967295
 * @throws OutOfDomain when the seed is not such a number
 * Source: Chris Doty-Humphrey, PractRand (public domain), generator sfc32 (from memory).
 * @example seededRandom(7).below(6) // a die's throw, the same on every machine
 */
export function seededRandom(seed: number): SeededRandom {
  if (!Number.isInteger(seed) || seed < 0 || seed > 0xffff_ffff) {
    throw new OutOfDomain('seed', seed, 'whole numbers from 0 to 4294967295');
  }
  let a = seed | 0;
  let b = (seed ^ 0x9e37_79b9) | 0;
  let c = Math.imul(seed, 0x85eb_ca6b) | 0;
  let counter = 1;

  function next(): number {
    const sum = (((a + b) | 0) + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (c << 21) | (c >>> 11);
    c = (c + sum) | 0;
    return sum >>> 0;
  }
  for (let round = 0; round < 12; round += 1) next();

  function below(limit: number): number {
    if (!Number.isInteger(limit) || limit < 1 || limit > 0x1_0000_0000) {
      throw new OutOfDomain('limit', limit, 'whole numbers from 1 to 4294967296');
    }
    const fair = 0x1_0000_0000 - (0x1_0000_0000 % limit);
    let draw = next();
    while (draw >= fair) draw = next();
    return draw % limit;
  }

  return {
    uniform: () => next() / 0x1_0000_0000,
    below,
    shuffled<Item>(items: readonly Item[]): Item[] {
      const copy = [...items];
      for (let last = copy.length - 1; last > 0; last -= 1) {
        const pick = below(last + 1);
        const held = copy[last] as Item;
        copy[last] = copy[pick] as Item;
        copy[pick] = held;
      }
      return copy;
    },
  };
}
