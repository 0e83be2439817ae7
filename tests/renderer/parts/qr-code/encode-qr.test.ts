import { describe, expect, it } from 'vitest';
import { OutOfDomain } from '#core/out-of-domain.ts';
import { encodeQr } from '#renderer/parts/qr-code/encode-qr.ts';
import { fc } from '#tests/properties.ts';
import { readQr } from './read-qr.ts';

const drawn = (modules: readonly (readonly boolean[])[]) =>
  modules.map((row) => row.map((isDark) => (isDark ? '#' : '.')).join(''));

describe('encodeQr(text)', () => {
  it('makes the standard’s own example, 01234567 in version 1-M, codeword for codeword', () => {
    // Source: ISO/IEC 18004:2015, annex I.2, from memory.
    const { codewords } = readQr(encodeQr('01234567'));
    expect(codewords.map((codeword) => codeword.toString(16).padStart(2, '0')).join(' ')).toBe(
      '10 20 0c 56 61 80 ec 11 ec 11 ec 11 ec 11 ec 11 a5 24 d4 c1 ed 36 c7 87 2c 55',
    );
  });

  it('draws finders, timing lines and the dark module where the standard has them', () => {
    const rows = drawn(encodeQr('01234567'));
    expect(rows).toHaveLength(21);
    expect(rows.slice(0, 7).map((row) => row.slice(0, 8))).toEqual([
      '#######.',
      '#.....#.',
      '#.###.#.',
      '#.###.#.',
      '#.###.#.',
      '#.....#.',
      '#######.',
    ]);
    expect(rows[6]?.slice(6, 15)).toBe('#.#.#.#.#');
    expect(
      rows
        .map((row) => row[6])
        .slice(6, 15)
        .join(''),
    ).toBe('#.#.#.#.#');
    expect(rows[13]?.[8]).toBe('#');
  });

  it('takes the smallest version: an id of a jar fits 29 modules, its capitals 25', () => {
    const id = '019aa2b4-5c6d-7e8f-9a0b-1c2d3e4f5a6b';
    expect(encodeQr(id)).toHaveLength(29);
    expect(encodeQr(id.toUpperCase())).toHaveLength(25);
    expect(readQr(encodeQr(id)).text).toBe(id);
    expect(readQr(encodeQr(id.toUpperCase())).text).toBe(id.toUpperCase());
  });

  // Capacities at level M. Source: ISO/IEC 18004:2015, table 7, from memory.
  it.each([
    ['digits', '7', [34, 63, 101, 149, 202]],
    ['capitals', 'Q', [20, 38, 61, 90, 122]],
    ['bytes', 'q', [14, 26, 42, 62, 84]],
  ])('fills versions 1 to 5 to the last of their %s, then takes the next', (_, letter, capacities) => {
    for (const [place, capacity] of capacities.entries()) {
      const full = letter.repeat(capacity);
      expect(encodeQr(full)).toHaveLength(21 + 4 * place);
      expect(readQr(encodeQr(full))).toMatchObject({ text: full });
      if (place < 4) expect(encodeQr(`${full}${letter}`)).toHaveLength(25 + 4 * place);
      else expect(() => encodeQr(`${full}${letter}`)).toThrow(OutOfDomain);
    }
  });

  it('reads back whatever it wrote, its error correction fitting its data', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme-ascii', minLength: 1, maxLength: 84 }), (text) => {
        const read = readQr(encodeQr(text));
        expect(read.text).toBe(text);
        expect(read.syndromes.every((value) => value === 0)).toBe(true);
      }),
      { numRuns: 150, seed: 18_004 },
    );
  });

  it('uses each of the eight masks for some text, and all eight are read', () => {
    const texts = ['71271', '15838', '7919', '1021551', '0', '1662990', '324679', '8600034'];
    expect(texts.map((text) => readQr(encodeQr(text)))).toMatchObject(texts.map((text, mask) => ({ text, mask })));
  });

  it('refuses an empty text and letters beyond ASCII', () => {
    expect(() => encodeQr('')).toThrow(OutOfDomain);
    expect(() => encodeQr('Gärung')).toThrow(OutOfDomain);
  });
});
