import { describe, expect, it } from 'vitest';
import { OutOfDomain } from '#core/out-of-domain.ts';
import { differenceOfVersions } from '#core/recipe/difference-of-versions.ts';
import { formulaOfJar } from '#core/recipe/formula-of-jar.ts';
import { scaleFormula } from '#core/recipe/scale-formula.ts';
import type { Formula } from '#core/trial/formula.ts';

const jar: Formula = {
  additions: [
    { ingredient: 'raspberries', mass_g: 75, state: 'fresh' },
    { ingredient: 'ginger root', mass_g: 6, state: 'fresh', leftIn: false },
  ],
  days: 2,
  cover: 'cloth',
  temperature_C: 22,
};

describe('formulaOfJar(jar, base_mL, baseName)', () => {
  it('gives grams per litre of base', () => {
    expect(formulaOfJar(jar, 800, 'Kombucha 14')).toEqual({
      base: { name: 'Kombucha 14' },
      additions: [
        { ingredient: 'raspberries', amount_g_per_L: 93.75, state: 'fresh' },
        { ingredient: 'ginger root', amount_g_per_L: 7.5, state: 'fresh', form: 'strained out before the end' },
      ],
      days: 2,
      temperature_C: 22,
      cover: 'cloth',
    });
  });

  it('scaled to the jar’s own base gives the jar back', () => {
    const { additions } = scaleFormula(formulaOfJar(jar, 800, 'base'), { base_mL: 800 });
    expect(additions.map(({ mass_g }) => mass_g)).toEqual([75, 6]);
  });

  it('leaves unsaid what nobody said, instead of inventing a number', () => {
    const unsaid = formulaOfJar({ ...jar, cover: null, temperature_C: null }, 800, 'base');
    expect('temperature_C' in unsaid).toBe(false);
    expect('cover' in unsaid).toBe(false);
  });

  it('keeps the make-up of an ingredient of one’s own', () => {
    const own = { name: 'aronia', water_g: 80, sugars_g: 8 };
    const formula = formulaOfJar(
      { ...jar, additions: [{ ingredient: own, mass_g: 10, state: 'frozen' }] },
      1000,
      'base',
    );
    expect(formula.additions[0]).toEqual({
      ingredient: 'aronia',
      amount_g_per_L: 10,
      state: 'frozen',
      composition: own,
    });
  });

  it('refuses a jar without base', () => {
    expect(() => formulaOfJar(jar, 0, 'base')).toThrow(OutOfDomain);
  });
});

describe('differenceOfVersions over two jars', () => {
  const sentences = (before: Formula, after: Formula, beforeBase = 800, afterBase = 800) =>
    differenceOfVersions(formulaOfJar(before, beforeBase, 'base'), formulaOfJar(after, afterBase, 'base')).map(
      ({ sentence }) => sentence,
    );

  it('finds the same drink in a jar of another size', () => {
    const larger = { ...jar, additions: jar.additions.map((one) => ({ ...one, mass_g: one.mass_g * 2.1 })) };
    expect(sentences(jar, larger, 800, 800 * 2.1)).toEqual([]);
  });

  it('says each change so that a cook can read it', () => {
    const [raspberries] = jar.additions;
    const after: Formula = {
      ...jar,
      additions: raspberries === undefined ? [] : [{ ...raspberries, mass_g: 90, state: 'frozen' }],
      days: 3,
      temperature_C: null,
    };
    expect(sentences(jar, after)).toEqual([
      'raspberries: 93.75 g/L became 112.5 g/L (+20 %).',
      'raspberries, state: “fresh” became “frozen”.',
      'ginger root (fresh), 7.5 g/L: left out in this version.',
      'Days: 2 became 3.',
      'Temperature: 22 °C became not given.',
    ]);
  });
});
