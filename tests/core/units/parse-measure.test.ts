import { describe, expect, it } from 'vitest';
import { parseMeasure } from '#core/units/parse-measure.ts';
import { parseQuantity } from '#core/units/parse-quantity.ts';
import { unitDoubt } from '#core/units/unit-doubt.ts';

const read = (text: string) => {
  const measure = parseMeasure(text);
  return measure.ok ? measure.value : measure.problem;
};

describe('parseMeasure(text)', () => {
  it.each([
    ['1/2 cup = 75 g', { unit: 'cup', form: null, mass_g: 150 }],
    ['1 cup mashed = 232 g', { unit: 'cup', form: 'mashed', mass_g: 232 }],
    ['2 tbsp is 42 g', { unit: 'tbsp', form: null, mass_g: 21 }],
    ['3 pieces weigh 360 g', { unit: 'each', form: null, mass_g: 120 }],
  ])('reads %s', (text, measure) => expect(read(text)).toEqual(measure));
  it('turns any other volume into cups', () => {
    // A US cup is 236.5882365 mL (NIST SP 811).
    expect(read('100 mL = 60 g')).toEqual({ unit: 'cup', form: null, mass_g: expect.closeTo(141.9529, 3) });
  });
  it('asks where kilograms were typed for grams, and gives what is permitted', () => {
    expect(read('1/2 cup = 75 kg')).toMatchObject({
      code: 'out-of-range',
      message: expect.stringMatching(/Did you mean 75 g\? Permitted: 1\.18 to 237 g\./),
    });
    expect(read('1 cup = 5 mg')).toMatchObject({ code: 'out-of-range' });
  });
  it.each([
    '75 g',
    '1/2 cup =',
    '1/2 cup = 75',
    '1/2 cup = 0 g',
    '0 cup = 5 g',
    '20 °C = 5 g',
    '1 cup = 2 cups',
    '-1 cup = 5 g',
    '',
  ])('refuses “%s” with a sentence', (text) =>
    expect(read(text)).toMatchObject({ code: expect.any(String), message: expect.stringMatching(/\w+ \w+/) }),
  );
});

describe('unitDoubt(quantity)', () => {
  const doubt = (text: string) => {
    const quantity = parseQuantity(text);
    return quantity.ok ? unitDoubt(quantity.value) : undefined;
  };
  it('asks at 75 kg whether 75 g were meant', () => {
    expect(doubt('75 kg')).toEqual({
      question: 'That is 75 kg. Did you mean 75 g?',
      instead: 75,
      insteadWords: '75 g',
    });
    expect(doubt('60 lb')?.instead).toBeCloseTo(60 * 28.349523125, 9);
    expect(doubt('750 L')?.insteadWords).toBe('750 mL');
  });
  it.each(['1.2 kg', '25 kg', '75 g', '30000 g', '20 L'])('lets %s pass', (text) => expect(doubt(text)).toBeNull());
});
