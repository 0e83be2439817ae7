import { describe, expect, it } from 'vitest';
import type { JarInput } from '#core/ferment/jar-input.ts';
import { jarSheet } from '#core/ferment/jar-sheet.ts';
import { measuresOf } from '#renderer/format/use-measures.ts';
import { reckoningOf } from '#renderer/pages/jar/reckoning.ts';
import {
  alcoholFacts,
  alcoholSentence,
  closingFacts,
  closingSentence,
  coldBasis,
  coldSentence,
  type JarScience,
  sheetLack,
  sheetSentence,
  sugarFacts,
} from '#renderer/pages/jar/sheet-words.ts';
import { idOf } from '../small-kitchen.ts';

const metric = measuresOf('metric');
const jar: JarInput = {
  vessel: { kind: 'swing-top', capacity_mL: 1000 },
  base: { volume_mL: 800, temperature_C: 22, sugar_g_per_L: 30, alcohol_pctVol: 0.4 },
  additions: [{ ingredient: 'raspberries', mass_g: 80, state: 'fresh' }],
  ambient_C: 22,
};
const science = (change: Partial<JarInput> = {}, more: Partial<JarScience> = {}): JarScience => ({
  sheet: jarSheet({ ...jar, ...change }) as JarScience['sheet'],
  problem: null,
  room: { temperature_C: 22, from: 'plan' },
  base: { id: idOf(5), name: 'Saturday', sugar: { g_per_L: 30, from: 'now' }, alcohol: { pctVol: 0.4, from: 'given' } },
  isClosed: false,
  closing: null,
  bottled: null,
  cold: null,
  ...more,
});
const unknownSugar = { base: { ...jar.base, sugar_g_per_L: null } };
const value = (facts: readonly { name: string; value: unknown }[], name: string) =>
  facts.find((fact) => fact.name === name)?.value;

describe('the words of a jar’s sheet', () => {
  it('begin with a sentence a cook understands', () => {
    expect(sheetSentence(science(), metric)).toBe(
      'With its fruit in, the jar is 88 % full: 877 mL, with room for 123 mL above. It starts with 31.4 g/L of sugar, about 3.1 °Bx.',
    );
    const over = science({ base: { ...jar.base, volume_mL: 960 } });
    expect(sheetSentence(over, metric)).toMatch(/would run over/);
    expect(
      value(
        sugarFacts({ sheet: jarSheet({ ...jar, base: { ...jar.base, volume_mL: 960 } }) as never }, metric),
        'Headspace',
      ),
    ).toMatch(/^none: 37 mL too much$/);
  });

  it('give every figure its doubt', () => {
    const { sheet } = science();
    if (sheet === null) throw new Error('there is a sheet');
    const facts = sugarFacts({ sheet }, metric);
    expect(value(facts, 'Volume with the fruit')).toBe('877 mL ± 8.8 mL');
    // 80 g at 4.42 g per 100 g is 3.5 g, a fifth more or less.
    expect(value(facts, 'Sugar brought by what is added')).toBe('3.5 g (2.8 g to 4.2 g)');
    expect(value(facts, 'Sugar in the jar')).toBe('31.4 g/L (30.6 g/L to 32.2 g/L)');
  });

  it('say and ask for an unknown sugar; nowhere does it count as none', () => {
    const asked = science(unknownSugar, { base: { id: idOf(5), name: 'Saturday', sugar: null, alcohol: null } });
    expect(sheetSentence(asked, metric)).toMatch(/How sweet it starts is not known\.$/);
    expect(sheetLack(asked)).toMatchObject({
      to: `/bases/${idOf(5)}`,
      words: expect.stringMatching(/^How much sugar does “Saturday”/),
    });
    expect(sheetLack(science(unknownSugar, { base: null }))?.words).toMatch(/never counted as none/);
    if (asked.sheet === null) throw new Error('there is a sheet');
    expect(value(sugarFacts({ sheet: asked.sheet }, metric), 'Sugar in the jar')).toBe('not known');
    expect(value(alcoholFacts({ sheet: asked.sheet, base: asked.base }, metric), 'If all sugar became alcohol')).toBe(
      'not known',
    );
    expect(
      value(
        alcoholFacts({ sheet: asked.sheet, base: asked.base }, metric),
        'Sugar that may still ferment below 0.5 % vol',
      ),
    ).toMatch(/g\/L, if the base holds no alcohol yet$/);
    expect(alcoholSentence(asked)).toMatch(/can’t be said while a sugar is not known/);
    const fruit = science({ additions: [{ ingredient: 'blackcurrants', mass_g: 40, state: 'fresh' }] });
    expect(sheetLack(fruit)).toMatchObject({ to: '/pantry', words: expect.stringContaining('blackcurrants') });
    expect(sheetLack(science())).toBeNull();
  });

  it('call neither alcohol a forecast, and say what is not known of the base', () => {
    expect(alcoholSentence(science())).toMatch(
      /the 0\.4 % vol that the base holds already counted in\. Neither figure below is a forecast/,
    );
    const fermented = { pctVol: 1.3639, from: 'fermented' } as const;
    const sweet = { id: idOf(5), name: 'Saturday', sugar: null, alcohol: fermented };
    expect(alcoholSentence(science({}, { base: sweet }))).toMatch(
      /with up to 1\.4 % vol that the base may hold already counted in: so much its own sugar can have made\./,
    );
    const base = { id: idOf(5), name: 'Saturday', sugar: null, alcohol: null };
    expect(alcoholSentence(science({}, { base }))).toMatch(/comes on top: nobody has said how much/);
  });

  it('hold the pressure against the rating, at the room’s and at a warm day’s temperature', () => {
    const closed = science(
      { sealedWithSugar_g_per_L: 8 },
      { isClosed: true, closing: { sugar_g_per_L: 8, from: 'reading' } },
    );
    const pressure = closed.sheet?.carbonation?.gauge_bar;
    expect(closingSentence(closed, undefined, metric)).toMatch(/Nobody has said what pressure the vessel is made for/);
    expect(closingSentence(closed, 1.5, metric)).toMatch(/more than the 1\.5 bar the vessel is made for/);
    expect(closingSentence(closed, 10, metric)).toMatch(
      /The vessel is made for 10 bar\. From 3 bar on a wine counts as sparkling/,
    );
    const facts = closingFacts(closed, 6, metric);
    expect(value(facts, 'Pressure at 35 °C, a warm day')).toContain(`up to ${Number(pressure?.at35.toFixed(2))} bar ±`);
    expect(value(facts, 'Pressure at 22 °C')).toContain(`up to ${Number(pressure?.ambient.toFixed(2))} bar ±`);
    expect(closingFacts(science(), 6, metric)).toEqual([]);
  });

  it('say what a cold start costs and that the rest is not temperature', () => {
    const cold: JarScience['cold'] = {
      hours: { low: 4.2, high: 10.1 },
      lostHours: { low: 1.4, high: 3.6 },
      coefficient_W_per_m2K: 8,
      own: null,
      slowStart: null,
    };
    const frozen = { additions: [{ ingredient: 'raspberries, frozen', mass_g: 80, state: 'frozen' as const }] };
    const said = coldSentence(science(frozen, { cold }), metric);
    expect(said).toMatch(/^The frozen fruit cools the jar to 1\d(\.\d)? °C, with no ice left\. After 4 h to 10 h/);
    expect(said).toMatch(
      /costs a start 1\.5 h to 3\.5 h at 22 °C\. If it starts later than that, the rest is not temperature\.$/,
    );
    expect(coldBasis(science(frozen, { cold }), metric)).toMatch(/8\.0 W per m² and degree, as in still air/);
    const own = {
      first: { hours: 1, temperature_C: 12 },
      second: { hours: 5, temperature_C: 17 },
      timeConstant_h: { low: 4, middle: 5.8, high: null },
    };
    expect(coldBasis(science(frozen, { cold: { ...cold, own, coefficient_W_per_m2K: 5.1 } }), metric)).toMatch(
      /^Calibrated by this jar’s own readings: 12 °C at 1 h and 17 °C at 5 h .* 5\.1 W/,
    );
    const slowStart = {
      against: 'A',
      late_h: 17,
      cold_h: { low: 1, high: 4 },
      rest_h: { low: 13, high: 16 },
      sentence: 'Of 17 h.',
    };
    expect(coldSentence(science(frozen, { cold: { ...cold, slowStart } }), metric)).toMatch(
      /Its first bubbles came 17 h after those of jar A\. Of 17 h\.$/,
    );
    expect(coldSentence(science(), metric)).toBeNull();
  });

  it('name a basis for each line of the reckoning, and never say safe', () => {
    const lines = reckoningOf(science({}, { closing: { sugar_g_per_L: 8, from: 'start' } }), metric);
    expect(lines.length).toBeGreaterThanOrEqual(5);
    for (const { what, basis } of lines) {
      expect(basis.length).toBeGreaterThan(10);
      expect(what + basis).not.toMatch(/\bsafe/i);
    }
  });
});
