import { describe, expect, it } from 'vitest';
import { measuresOf } from '#renderer/format/use-measures.ts';
import { gravityReading } from '#renderer/parts/jar-work/gravity-reading.ts';
import { stockWords } from '#renderer/parts/jar-work/stock-words.ts';
import { titrationResult } from '#renderer/parts/jar-work/titration.ts';

const metric = measuresOf('metric');

describe('a hydrometer reading', () => {
  it('is logged as corrected, with what was read in its note', () => {
    expect(gravityReading(1.038, 30, 'celsius20', metric)).toEqual({
      sg: 1.0407,
      said: 'Corrected to 20 °C: SG 1.041 (read 1.038 at 30 °C, made for 20 °C).',
      note: 'Hydrometer read 1.038 at 30 °C, made for 20 °C; corrected to 20 °C.',
      isFault: false,
    });
  });
  it('is logged as read without the sample’s temperature, or when so wished, or once it is lighter than water', () => {
    expect(gravityReading(1.038, undefined, 'celsius20', metric)).toMatchObject({
      sg: 1.038,
      note: null,
      isFault: false,
    });
    expect(gravityReading(1.038, 60, 'asRead', metric)).toMatchObject({ sg: 1.038, note: null, isFault: false });
    expect(gravityReading(0.996, 20, 'celsius20', metric)).toMatchObject({ sg: 0.996, isFault: false });
  });
  it('is held back where its temperature lies outside what can be corrected', () => {
    expect(gravityReading(1.038, 60, 'celsius20', metric)).toMatchObject({ isFault: true });
    expect(gravityReading(1.35, 20, 'celsius20', metric)).toMatchObject({ isFault: true });
  });
});

describe('a titration', () => {
  it('comes to grams per litre, and notes how it was done and to which end point', () => {
    // AOAC 942.15: 12 mL of 0.1 N on 15 mL, as tartaric acid (0.075 g a milliequivalent), is 6.0 g/L.
    const result = titrationResult({
      sample_mL: 15,
      titrant_mL: 12,
      normality: 0.1,
      acid: 'tartaric',
      endPoint: 'oiv',
    });
    expect(result).toMatchObject({ ok: true, g_per_L: expect.closeTo(6, 2) });
    expect(result.ok && result.note).toMatch(/^Titrated 15 mL with 12 mL of 0\.1 N, to pH 7\.0/);
  });
  it('beyond what a drink holds is asked about, not logged', () => {
    const result = titrationResult({ sample_mL: 1, titrant_mL: 100, normality: 1, acid: 'lactic', endPoint: 'aoac' });
    expect(result).toMatchObject({ ok: false, message: expect.stringContaining('permitted: 0 to 200') });
  });
});

describe('starting jars', () => {
  it('says what is left, what ran short and what nobody counted; nothing where nobody counts', () => {
    const one = { taken_g: 80, left_g: 20, short_g: null };
    expect(
      stockWords(
        [
          { name: 'pears', ...one },
          { name: 'ginger', ...one, left_g: 0, short_g: 5 },
          { name: 'mint', ...one, left_g: null },
        ],
        metric,
      ),
    ).toEqual([
      'On hand now: 20 g pears.',
      'More was used than noted of ginger (5 g): count again.',
      'Not counted: mint.',
    ]);
    expect(stockWords([{ name: 'mint', ...one, left_g: null }], metric)).toEqual([]);
  });
});
