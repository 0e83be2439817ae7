import { describe, expect, it } from 'vitest';
import { bottleText, bottleWords } from '#renderer/pages/bottle-label/bottle-words.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';

type Version = ValueOf<'recipes:open'>['versionList'][number];
type Ingredient = ValueOf<'pantry:list'>['ingredients'][number];

function ingredient(name: string, allergens: Ingredient['allergens'], aliases: string[] = []) {
  return { name, allergens, aliases };
}

const pantry = [
  ingredient('pears', []),
  ingredient('almonds', ['nuts']),
  ingredient('celery', ['celery'], ['Celery, raw']),
  ingredient('apricots, dried', ['sulphites']),
];

function version(additions: Version['formula']['additions'], codes: string[] = []): Version {
  return {
    id: '019aa2b4-5c6d-7e8f-9a0b-1c2d3e4f5a6b',
    number: 1,
    createdAt: '2026-03-01T10:00:00Z',
    why: null,
    formula: { additions, days: 3, cover: null, temperature_C: null },
    base_mL: 700,
    volume_mL: 780,
    vessel: { kind: 'swing-top', capacity_mL: 1000 },
    target: [],
    basis: 'none',
    base: null,
    alsoHeld: {},
    cautions: codes.map((code) => ({ code, message: code, basis: 'test' })),
    chain: { trial: null, level: null, jars: [], tastings: [] },
  };
}

const draft = {
  name: 'Stall pear',
  base: 'kvass base (water, RYE bread)',
  volume: '330',
  bestBefore: '',
  lot: '',
  maker: '',
};

const fresh = (name: string, mass_g: number) => ({ ingredient: name, mass_g, state: 'fresh' as const });

describe('bottleWords(version, draft, pantry)', () => {
  it('lists the base and the additions by weight, the heaviest first', () => {
    const text = (additions: Version['formula']['additions']) =>
      bottleWords(version(additions), draft, pantry).ingredients.map((pieces) =>
        pieces.map(({ text }) => text).join(''),
      );
    expect(text([fresh('almonds', 5), fresh('pears', 80)])).toEqual([draft.base, 'pears', 'almonds (nuts)']);
    expect(text([fresh('pears', 900)])[0]).toBe('pears');
  });

  it('marks allergens, in the pantry’s ingredients and in the owner’s capitals, and names them once more', () => {
    const label = bottleWords(
      version([fresh('apricots, dried', 40), fresh('Celery, raw', 10), fresh('almonds', 5)]),
      draft,
      pantry,
    );
    expect(
      label.ingredients
        .flat()
        .filter(({ isAllergen }) => isAllergen)
        .map(({ text }) => text),
    ).toEqual(['RYE', 'dried apricots', ' (sulphites)', 'raw Celery', 'almonds', ' (nuts)']);
    expect(label.contains).toEqual(['rye', 'sulphites', 'celery', 'nuts']);
    const text = bottleText(label, '330 mL');
    expect(text).toContain('DRIED APRICOTS (SULPHITES), RAW CELERY, ALMONDS (NUTS).');
    expect(text).toContain('Contains: RYE, SULPHITES, CELERY, NUTS.');
  });

  it('says which ingredients the pantry does not know: their allergens are unknown, not none', () => {
    const own = { ingredient: { name: 'malt', water_g: 5, sugars_g: 60 }, mass_g: 10, state: 'fresh' as const };
    expect(bottleWords(version([own, fresh('pears', 80)]), draft, pantry).unknown).toEqual(['malt']);
  });

  it('says the cautions of the recipe: cold, care, alcohol as far as it is known, honey', () => {
    const lines = (...codes: string[]) => bottleWords(version([], codes), draft, pantry).lines.slice(2);
    expect(lines('alcohol-line')).toEqual(['May hold more than 0.5 % vol alcohol.']);
    expect(lines('alcohol-bound')).toEqual(['May hold a little alcohol.']);
    expect(lines('alcohol-unknown', 'honey-infants')).toEqual([
      'May hold alcohol; how much is not known.',
      'Holds honey: not for infants under one year.',
    ]);
    expect(bottleWords(version([]), draft, pantry).lines).toEqual([
      'Keep cold.',
      'Live drink: pressure builds up. Open with care, slowly, away from your face.',
    ]);
  });

  it('prints a line to write on for what the owner left empty, and the day as it was entered', () => {
    expect(bottleWords(version([]), draft, pantry).facts).toEqual([
      { name: 'Best before', value: '________' },
      { name: 'Lot', value: '________' },
    ]);
    const filled = { ...draft, bestBefore: '2026-05-04', lot: ' L-7 ', maker: 'Stall, 1 High Street' };
    expect(bottleWords(version([]), filled, pantry).facts).toEqual([
      { name: 'Best before', value: '4 May 2026' },
      { name: 'Lot', value: 'L-7' },
      { name: 'Made by', value: 'Stall, 1 High Street' },
    ]);
  });

  it('says that something was strained out', () => {
    const strained = { ...fresh('pears', 80), leftIn: false };
    expect(bottleText(bottleWords(version([strained]), draft, pantry), '330 mL')).toContain('pears (strained out).');
  });
});
