import { fieldProduct, powerOfTwo } from './galois-field.ts';

/** The generator polynomial of a degree, highest power first and without its leading one. */
function generator(degree: number): number[] {
  let polynomial = [1];
  for (let root = 0; root < degree; root += 1) {
    const next = [...polynomial, 0];
    for (const [place, coefficient] of polynomial.entries()) {
      next[place + 1] = (next[place + 1] ?? 0) ^ fieldProduct(coefficient, powerOfTwo(root));
    }
    polynomial = next;
  }
  return polynomial.slice(1);
}

/**
 * The error correction codewords of one block.
 *
 * Method: the remainder of the data, times x to the count, divided by the generator polynomial with roots 2⁰ … 2^(count − 1).
 *
 * @param data codewords, each 0–255
 * @param count how many to make
 * Accuracy: exact. Source: ISO/IEC 18004:2015, 7.5.
 * @example errorCorrection([0x10, 0x20, 0x0c], 10).length // 10
 */
export function errorCorrection(data: readonly number[], count: number): number[] {
  const divisor = generator(count);
  let remainder = new Array<number>(count).fill(0);
  for (const codeword of data) {
    const factor = codeword ^ (remainder[0] ?? 0);
    remainder = [...remainder.slice(1), 0].map((value, place) => value ^ fieldProduct(divisor[place] ?? 0, factor));
  }
  return remainder;
}
