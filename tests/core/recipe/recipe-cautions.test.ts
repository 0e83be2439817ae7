import { describe, expect, it } from 'vitest';
import type { JarInput } from '#core/ferment/jar-input.ts';
import { recipeCautions } from '#core/recipe/recipe-cautions.ts';

const jar: JarInput = {
  vessel: { kind: 'swing-top', capacity_mL: 1000 },
  base: { volume_mL: 800, temperature_C: 22, sugar_g_per_L: 40 },
  additions: [{ ingredient: 'raspberries', mass_g: 75, state: 'fresh' }],
  ambient_C: 22,
};
const known = { isSugarKnown: true, ownAllergens: [] };

describe('recipeCautions(jar, known)', () => {
  it('warns of closed glass, alcohol, mould, acidity, who should ask first, and selling', () => {
    expect(recipeCautions(jar, known).map(({ code }) => code)).toEqual([
      'vessel-unrated',
      'alcohol-line',
      'mould',
      'ph-measure',
      'live-drink',
      'chlorinated-water',
      'selling',
    ]);
  });

  it('does not bound alcohol where sugar is unknown: it says so instead', () => {
    const codes = recipeCautions(
      { ...jar, base: { ...jar.base, sugar_g_per_L: 0 } },
      { ...known, isSugarKnown: false },
    );
    expect(codes.filter(({ code }) => code.startsWith('alcohol')).map(({ code }) => code)).toEqual(['alcohol-unknown']);
    expect(codes.map(({ message }) => message).join(' ')).not.toMatch(/% vol\. It is a bound/);
  });

  it('names the allergens of the owner’s own ingredients', () => {
    const found = recipeCautions(jar, { ...known, ownAllergens: ['nuts', 'milk'] });
    expect(found.find(({ code }) => code === 'allergens')?.message).toContain('nuts, milk');
  });

  it('still cautions where no sheet can be worked out', () => {
    const impossible = { ...jar, base: { ...jar.base, temperature_C: 300 } };
    expect(recipeCautions(impossible, known).map(({ code }) => code)).toEqual([
      'vessel-unrated',
      'chlorinated-water',
      'selling',
    ]);
  });

  it('gives each caution a basis and never calls anything safe', () => {
    for (const { message, basis } of recipeCautions(jar, known)) {
      expect(basis.length).toBeGreaterThan(5);
      expect(message).not.toMatch(/\bsafe/i);
    }
  });
});
