import { describe, expect, it } from 'vitest';
import type { JarInput } from '#core/ferment/jar-input.ts';
import { jarProblem } from '#core/ferment/jar-problem.ts';
import { jarSheet } from '#core/ferment/jar-sheet.ts';
import { OutOfDomain } from '#core/out-of-domain.ts';
import { pantryTable } from '#core/pantry/pantry-table.ts';
import { fc } from '#tests/properties.ts';

const jar: JarInput = {
  vessel: { kind: 'lidded-jar', capacity_mL: 1000 },
  base: { volume_mL: 800, temperature_C: 22, sugar_g_per_L: 30, alcohol_pctVol: 0.4 },
  additions: [{ ingredient: 'raspberries', mass_g: 80, state: 'fresh' }],
  ambient_C: 22,
};
const codes = (input: JarInput) => jarSheet(input).cautions.map((one) => one.code);

describe('jarSheet', () => {
  it('adds the fruit’s volume to the base and leaves the rest as headspace', () => {
    const sheet = jarSheet(jar);
    // 80 g of raspberries at Choi–Okos density, worked by hand: 85.75/995.74 + 1.20/1319.53 + 0.65/917.24 + 0.46/2418.19 + 6.5/1304.18 + 5.44/1592.89 (g per 100 g).
    const hand =
      80 * 10 * (85.75 / 995.74 + 1.2 / 1319.53 + 0.65 / 917.24 + 0.46 / 2418.19 + 6.5 / 1304.18 + 5.44 / 1592.89);
    expect(sheet.volume_mL).toBeCloseTo(800 + hand, 2);
    expect(sheet.headspace_mL).toBeCloseTo(1000 - sheet.volume_mL, 9);
    expect(sheet.fillFraction).toBeCloseTo(sheet.volume_mL / 1000, 12);
  });
  it('counts base and fruit sugar per litre of contents', () => {
    const sheet = jarSheet(jar);
    expect(sheet.sugar.added_g).toBeCloseTo(80 * 0.0442, 9);
    expect(sheet.sugar.total_g_per_L).toBeCloseTo((24 + 3.536) / (sheet.volume_mL / 1000), 9);
  });
  it('bounds the alcohol by kind of sugar and dilutes what the base holds', () => {
    const sheet = jarSheet(jar);
    const litres = sheet.volume_mL / 1000;
    const hexose = 80 * 0.0421;
    const ethanol_g = (24 + 80 * 0.0442 - hexose) * 0.53835 + hexose * 0.51143;
    expect(sheet.alcohol.ifAllSugar_pctVol).toBeCloseTo((0.4 * 0.8) / litres + ethanol_g / 7.892391 / litres, 4);
    expect(sheet.alcohol.ifYeastYield_pctVol).toBeCloseTo((0.32 + (27.536 * 0.48391) / 7.892391) / litres, 4);
    expect(sheet.alcohol.sugarLeftToHalfPercent_g_per_L).toBeCloseTo(((0.5 - 0.32 / litres) * 7.892391) / 0.53835, 4);
  });
  it('has no carbonation when nothing is closed and no thaw when nothing is frozen', () => {
    expect(jarSheet(jar)).toMatchObject({ carbonation: null, thaw: null, reasons: [] });
  });
  it('leaves sugar and alcohol unknown with blackcurrants, whose sugar nobody measured, and says so', () => {
    const sheet = jarSheet({ ...jar, additions: [{ ingredient: 'blackcurrants', mass_g: 50, state: 'fresh' }] });
    expect(sheet.sugar).toEqual({ added_g: null, total_g_per_L: null, brix: null, sg: null });
    expect(sheet.alcohol.ifAllSugar_pctVol).toBeNull();
    expect(sheet.volume_mL).toBeGreaterThan(845);
    expect(sheet.reasons.map((one) => one.code)).toEqual(['composition-unknown', 'composition-unknown']);
    expect(sheet.cautions.map((one) => one.code)).toContain('alcohol-unknown');
  });
  it('leaves sugar and alcohol unknown where nobody knows the base’s, asks for it, and still says how full the jar is', () => {
    const sheet = jarSheet({
      ...jar,
      base: { ...jar.base, sugar_g_per_L: null },
      additions: [{ ingredient: 'raspberries, frozen', mass_g: 80, state: 'frozen' }],
    });
    expect(sheet.sugar).toEqual({ added_g: expect.closeTo(3.536, 9), total_g_per_L: null, brix: null, sg: null });
    expect([sheet.alcohol.ifAllSugar_pctVol, sheet.alcohol.ifYeastYield_pctVol]).toEqual([null, null]);
    expect(sheet.reasons).toEqual([
      expect.objectContaining({ path: ['sugar'], code: 'base-sugar-unknown' }),
      expect.objectContaining({ path: ['alcohol'], code: 'base-sugar-unknown' }),
    ]);
    expect(sheet.volume_mL).toBeGreaterThan(870);
    expect(sheet.thaw?.mix_C).toBeLessThan(20);
    expect(sheet.cautions.map((one) => one.code)).toContain('alcohol-unknown');
  });
  it('says why there is no pressure in an open jar and in an overfull one', () => {
    const open = jarSheet({ ...jar, vessel: { kind: 'open-jar', capacity_mL: 1000 }, sealedWithSugar_g_per_L: 5 });
    expect([open.carbonation, open.reasons[0]?.code]).toEqual([null, 'vessel-open']);
    const over = jarSheet({ ...jar, base: { ...jar.base, volume_mL: 960 }, sealedWithSugar_g_per_L: 5 });
    expect([over.carbonation, over.reasons[0]?.code]).toEqual([null, 'jar-overfull']);
    expect(over.headspace_mL).toBeLessThan(0);
  });
  it('answers to an ingredient of one’s own', () => {
    const own = { name: 'my syrup', water_g: 40, sugars_g: 60 };
    const sheet = jarSheet({ ...jar, additions: [{ ingredient: own, mass_g: 10, state: 'liquid' }] });
    expect(sheet.sugar.added_g).toBeCloseTo(6, 12);
  });
  it('has a sheet for every ingredient of the pantry, all finite or null with a reason', () => {
    for (const { name } of pantryTable) {
      const sheet = jarSheet({
        ...jar,
        additions: [{ ingredient: name, mass_g: 60, state: 'frozen' }],
        sealedWithSugar_g_per_L: 10,
      });
      expect(JSON.stringify(sheet).includes('NaN'), name).toBe(false);
      expect(sheet.thaw?.mix_C, name).toBeLessThan(22);
      expect(sheet.sugar.brix === null, name).toBe(sheet.reasons.some((one) => one.code === 'composition-unknown'));
    }
  });
  it('never holds less volume, sugar or alcohol when more fruit goes in', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 150, noNaN: true }),
        fc.double({ min: 1, max: 40, noNaN: true }),
        (mass_g, more) => {
          const of = (grams: number) =>
            jarSheet({ ...jar, additions: [{ ingredient: 'grapes', mass_g: grams, state: 'fresh' }] });
          const less = of(mass_g);
          const greater = of(mass_g + more);
          expect(greater.volume_mL).toBeGreaterThan(less.volume_mL);
          expect(greater.sugar.added_g ?? 0).toBeGreaterThan(less.sugar.added_g ?? 0);
          expect(greater.alcohol.ifAllSugar_pctVol ?? 0).toBeGreaterThan(less.alcohol.ifYeastYield_pctVol ?? 0);
        },
      ),
    );
  });
  // Common practice, no source: a second ferment holds 50 to 150 g of crushed fruit per litre and runs one to three days, room left.
  it.each([50, 75, 100, 150])('is sensible on every line for a second ferment with %f g/L of fruit', (grams) => {
    const sheet = jarSheet({
      vessel: { kind: 'swing-top', capacity_mL: 1250, ratedGauge_bar: 6 },
      base: { volume_mL: 1000, temperature_C: 22, sugar_g_per_L: 20, alcohol_pctVol: 0.2 },
      additions: [{ ingredient: 'strawberries, frozen', mass_g: grams, state: 'frozen' }],
      ambient_C: 22,
      sealedWithSugar_g_per_L: 6,
    });
    expect(sheet.fillFraction).toBeGreaterThan(0.8);
    expect(sheet.fillFraction).toBeLessThan(0.95);
    expect(sheet.sugar.total_g_per_L).toBeGreaterThan(20);
    expect(sheet.sugar.total_g_per_L).toBeLessThan(28);
    expect(sheet.alcohol.ifAllSugar_pctVol).toBeGreaterThan(1);
    expect(sheet.alcohol.ifAllSugar_pctVol).toBeLessThan(2.2);
    expect(sheet.carbonation?.volumes).toBeGreaterThan(1.5);
    expect(sheet.carbonation?.volumes).toBeLessThan(3);
    expect(sheet.thaw?.mix_C).toBeGreaterThan(5);
    expect(sheet.thaw?.ice_g).toBe(0);
    expect(sheet.thaw?.hoursToWithinOneDegree).toBeLessThan(12);
    expect(sheet.thaw?.lostEquivalentHours.high).toBeLessThan(6);
  });
});

describe('the cautions of a jar', () => {
  it('caution a closing vessel without a rating at any pressure, closed or not', () => {
    expect(codes(jar)).toContain('vessel-unrated');
    expect(codes({ ...jar, sealedWithSugar_g_per_L: 0 })).toContain('vessel-unrated');
    expect(codes({ ...jar, vessel: { kind: 'open-jar', capacity_mL: 1000 } })).not.toContain('vessel-unrated');
  });
  it('caution a rated vessel from its rating', () => {
    const rated = (ratedGauge_bar: number) =>
      codes({ ...jar, vessel: { kind: 'crown', capacity_mL: 1000, ratedGauge_bar }, sealedWithSugar_g_per_L: 5 });
    expect(rated(1.5)).toContain('pressure-above-rating');
    expect(rated(10)).not.toContain('pressure-above-rating');
  });
  it('caution from 3 bar on, and glass again from 4.7', () => {
    const at = (kind: 'swing-top' | 'plastic', sugar: number) =>
      codes({ ...jar, vessel: { kind, capacity_mL: 950, ratedGauge_bar: 20 }, sealedWithSugar_g_per_L: sugar });
    expect(at('swing-top', 4)).not.toContain('pressure-sparkling');
    expect(at('swing-top', 9)).toContain('pressure-sparkling');
    expect(at('swing-top', 14)).toContain('pressure-glass-limit');
    expect(at('plastic', 14)).not.toContain('pressure-glass-limit');
  });
  it('caution an overfull jar, and one without room for froth', () => {
    expect(codes({ ...jar, base: { ...jar.base, volume_mL: 950 } })).toContain('overfull');
    expect(codes({ ...jar, base: { ...jar.base, volume_mL: 850 } })).toContain('headspace-froth');
    expect(codes(jar)).not.toContain('headspace-froth');
    // Exactly a tenth left is enough.
    expect(codes({ ...jar, base: { ...jar.base, volume_mL: 900 }, additions: [] })).not.toContain('headspace-froth');
  });
  it('caution alcohol past 0.5 % vol, and state the bound below it', () => {
    expect(codes(jar)).toContain('alcohol-line');
    const dry = { ...jar, base: { ...jar.base, sugar_g_per_L: 0, alcohol_pctVol: 0 }, additions: [] };
    expect(codes(dry)).toContain('alcohol-bound');
  });
  it('caution honey for infants, gluten on the label, preservatives in juice, mould on fruit', () => {
    const find = (ingredient: string, state: 'fresh' | 'liquid') =>
      codes({ ...jar, additions: [{ ingredient, mass_g: 20, state }] });
    expect(find('honey', 'liquid')).toContain('honey-infants');
    expect(find('rye bread', 'fresh')).toContain('allergens');
    expect(find('apple juice', 'liquid')).toContain('preserved-juice');
    expect(find('apples', 'fresh')).toContain('mould');
    expect(find('apple juice', 'liquid')).not.toContain('mould');
  });
  it('caution mould in every open jar, with or without fruit, and name the allergens of an ingredient of one’s own', () => {
    const open = { ...jar, vessel: { kind: 'open-jar' as const, capacity_mL: 1000 }, additions: [] };
    expect(codes(open)).toContain('mould');
    expect(codes({ ...jar, additions: [] })).not.toContain('mould');
    const own = { name: 'nut paste', water_g: 40, sugars_g: 20, allergens: ['nuts'] };
    const sheet = jarSheet({ ...jar, additions: [{ ingredient: own, mass_g: 10, state: 'fresh' }] });
    expect(sheet.cautions.find(({ code }) => code === 'allergens')?.message).toContain('nuts');
  });
  it('caution a closing sugar that the jar does not have', () => {
    expect(codes({ ...jar, sealedWithSugar_g_per_L: 60 })).toContain('sugar-at-closing');
    expect(codes({ ...jar, sealedWithSugar_g_per_L: 20 })).not.toContain('sugar-at-closing');
  });
  it('give each its basis and never say safe', () => {
    const all = jarSheet({
      ...jar,
      additions: [{ ingredient: 'honey', mass_g: 20, state: 'frozen' }],
      sealedWithSugar_g_per_L: 20,
    });
    for (const { message, basis } of all.cautions) {
      expect(basis.length).toBeGreaterThan(5);
      expect(message).not.toMatch(/\bsafe/i);
    }
  });
});

describe('jarProblem', () => {
  const added = (over: Partial<JarInput['additions'][number]>): JarInput => ({
    ...jar,
    additions: [{ ingredient: 'raspberries', mass_g: 75, state: 'fresh', ...over }],
  });
  it('finds nothing wrong with an ordinary jar', () => {
    expect(jarProblem(jar)).toBeNull();
  });
  it.each([
    ['negative fruit', added({ mass_g: -5 }), 'out-of-range', 'additions.0.mass_g'],
    ['75 kg for 75 g', added({ mass_g: 75_000 }), 'unit-mix-up', 'additions.0.mass_g'],
    ['a jar smaller than its fruit', added({ mass_g: 1500 }), 'jar-too-small', 'additions.0.mass_g'],
    ['an unknown ingredient', added({ ingredient: 'moon dust' }), 'ingredient-unknown', 'additions.0.ingredient'],
    ['below absolute zero', added({ temperature_C: -300 }), 'below-absolute-zero', 'additions.0.temperature_C'],
    ['frozen fruit at 5 °C', added({ state: 'frozen', temperature_C: 5 }), 'not-frozen', 'additions.0.temperature_C'],
    [
      'a composition above 100 g',
      added({ ingredient: { name: 'x', water_g: 80, sugars_g: 40 } }),
      'composition-impossible',
      'additions.0.ingredient',
    ],
    [
      'sugar beyond saturation',
      { ...added({ ingredient: 'sugar', mass_g: 900 }), base: { ...jar.base, volume_mL: 200 } },
      'sugar-beyond-saturation',
      'additions',
    ],
    ['base in litres', { ...jar, base: { ...jar.base, volume_mL: 0.8 } }, 'unit-mix-up', 'base.volume_mL'],
    ['base a thousandfold', { ...jar, base: { ...jar.base, volume_mL: 800_000 } }, 'unit-mix-up', 'base.volume_mL'],
    ['base twice the jar', { ...jar, base: { ...jar.base, volume_mL: 2500 } }, 'jar-too-small', 'base.volume_mL'],
    [
      'a base of 30 % vol',
      { ...jar, base: { ...jar.base, alcohol_pctVol: 30 } },
      'out-of-range',
      'base.alcohol_pctVol',
    ],
    ['no number', { ...jar, ambient_C: Number.NaN }, 'out-of-range', 'ambient_C'],
    ['a negative closing sugar', { ...jar, sealedWithSugar_g_per_L: -1 }, 'out-of-range', 'sealedWithSugar_g_per_L'],
    ['no capacity', { ...jar, vessel: { ...jar.vessel, capacity_mL: 0 } }, 'out-of-range', 'vessel.capacity_mL'],
  ] as const)('names %s, its place and the permitted range', (_what, input, code, path) => {
    const problem = jarProblem(input);
    expect(problem?.code).toBe(code);
    expect(problem?.path.join('.')).toBe(path);
    if (code !== 'ingredient-unknown') expect(problem?.message).toMatch(/Permitted: /);
    expect(() => jarSheet(input)).toThrow(OutOfDomain);
  });
  it('adds the additions up: two that fit alone may not fit together', () => {
    const two: JarInput = {
      ...jar,
      additions: [
        { ingredient: 'raspberries', mass_g: 600, state: 'fresh' },
        { ingredient: 'mango', mass_g: 600, state: 'fresh' },
      ],
    };
    expect(jarProblem(two)).toMatchObject({ code: 'jar-too-small', path: ['additions'] });
  });
  it('asks back "75 g?" when 75 kg was written', () => {
    expect(jarProblem(added({ mass_g: 75_000 }))?.message).toContain('did you mean 75 g?');
  });
  it('computes finite figures from whatever it lets pass', () => {
    const any = fc.double({ min: -1e6, max: 1e6 });
    fc.assert(
      fc.property(any, any, any, any, any, (capacity_mL, volume_mL, temperature_C, sugar, mass_g) => {
        const input: JarInput = {
          vessel: { kind: 'crown', capacity_mL: Math.abs(capacity_mL) },
          base: {
            volume_mL: Math.abs(volume_mL),
            temperature_C: temperature_C / 1e4,
            sugar_g_per_L: Math.abs(sugar / 2000),
          },
          additions: [{ ingredient: 'mango', mass_g: Math.abs(mass_g), state: 'frozen' }],
          ambient_C: 20,
          sealedWithSugar_g_per_L: 5,
        };
        if (jarProblem(input)) return;
        const numbers = JSON.stringify(jarSheet(input), (_key, value) =>
          typeof value === 'number' && !Number.isFinite(value) ? 'broken' : value,
        );
        expect(numbers).not.toContain('broken');
      }),
      { numRuns: 500 },
    );
  });
});
