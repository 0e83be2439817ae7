import { describe, expect, it } from 'vitest';
import { type TestDesk, temporaryDesk } from '#tests/store/temporary-kitchen.ts';
import { daysPlan } from './example-trial.ts';

async function named({ ask }: TestDesk, name: string) {
  const found = (await ask('pantry:list', {})).ingredients.find((each) => each.name === name);
  if (found === undefined) throw new Error(`The pantry has no ${name}.`);
  return found;
}

describe('pantry:figures', () => {
  it('fills what the table does not know, with its source, and goes back to the table again', async () => {
    const desk = await temporaryDesk();
    const { ask } = desk;
    // USDA SR28, 09083: blackcurrants have no sugar value.
    expect(await named(desk, 'blackcurrants')).toMatchObject({ sugars_g: null, ownFigures: [], isBuiltIn: true });
    expect(
      await ask('pantry:figures', { name: 'Currants, european black, raw', sugars_g: 6.6, source: 'label of the bag' }),
    ).toEqual({ name: 'blackcurrants', isOwn: true });
    expect(await named(desk, 'blackcurrants')).toMatchObject({
      isBuiltIn: true,
      water_g: 81.96,
      sugars_g: 6.6,
      fdcId: 173963,
      source: 'USDA SR28',
      ownFigures: ['sugars_g'],
      ownSource: 'label of the bag',
      measures: [{ unit: 'cup', form: null, mass_g: 112 }],
    });
    const names = (await ask('pantry:list', {})).ingredients.map(({ name }) => name);
    expect(names.filter((name) => name === 'blackcurrants')).toHaveLength(1);
    await ask('pantry:figures', { name: 'blackcurrants' });
    expect(await named(desk, 'blackcurrants')).toMatchObject({ sugars_g: null, ownFigures: [], id: null });
  });

  it('makes the jar’s sugar known, by whichever name the fruit was written', async () => {
    const { ask } = await temporaryDesk();
    const { base } = await ask('bases:start', { name: 'B', volume_mL: 3000, sugarStart_g_per_L: 50 });
    const currants = { ingredient: 'Currants, european black, raw', mass_g: 100, state: 'fresh' as const };
    const { trial } = await ask('trials:save', {
      ...daysPlan,
      base,
      held: { ...daysPlan.held, additions: [currants] },
    });
    const added = async () => (await ask('sheets:ofTrial', { trial })).levels[0]?.sheet?.sugar.added_g;
    expect(await added()).toBeNull();
    await ask('pantry:figures', { name: 'blackcurrants', sugars_g: 6.6, source: 'label' });
    expect(await added()).toBeCloseTo(6.6, 9);
  });

  it('drops the table’s kinds of sugar where the owner gives another total', async () => {
    const desk = await temporaryDesk();
    await desk.ask('pantry:figures', { name: 'raspberries', sugars_g: 3, source: 'refractometer' });
    expect(await named(desk, 'raspberries')).toMatchObject({ sugars_g: 3, glucose_g: null, fructose_g: null });
  });

  it('refuses a value without its source, more than fits into 100 g, and what does not come with the program', async () => {
    const { fail, kitchen } = await temporaryDesk();
    expect(await fail('pantry:figures', { name: 'blackcurrants', sugars_g: 6.6 })).toMatchObject({ path: ['source'] });
    expect(await fail('pantry:figures', { name: 'blackcurrants', sugars_g: 50, source: 'x' })).toMatchObject({
      path: ['sugars_g'],
      message: expect.stringMatching(/can be 0 to \d+/),
    });
    expect(
      await fail('pantry:figures', { name: 'blackcurrants', sugars_g: 5, glucose_g: 9, source: 'x' }),
    ).toMatchObject({ path: ['sugars_g'] });
    expect(await fail('pantry:figures', { name: 'moon dust', sugars_g: 5, source: 'x' })).toMatchObject({
      code: 'not-found',
    });
    expect(kitchen.read.all('SELECT id FROM ingredients')).toEqual([]);
  });
});

describe('pantry:save', () => {
  it('keeps measures and where the figures come from', async () => {
    const desk = await temporaryDesk();
    const measures = [{ unit: 'cup' as const, form: 'mashed', mass_g: 150 }];
    await desk.ask('pantry:save', { name: 'Quince', kind: 'fruit', sugars_g: 9, measures, source: 'label' });
    expect(await named(desk, 'Quince')).toMatchObject({ measures, source: 'label', isBuiltIn: false, water_g: null });
  });

  it('does not let an own ingredient be renamed to a built-in one', async () => {
    const { ask, fail } = await temporaryDesk();
    const { ingredient } = await ask('pantry:save', { name: 'Quince', kind: 'fruit' });
    expect(await fail('pantry:save', { id: ingredient, name: 'Raspberries', kind: 'fruit' })).toMatchObject({
      code: 'refused',
      path: ['name'],
    });
  });
});

describe('pantry:stock', () => {
  it('keeps one price, per kilogram or per litre', async () => {
    const desk = await temporaryDesk();
    await desk.ask('pantry:stock', { name: 'apple juice', price_per_kg: 2 });
    await desk.ask('pantry:stock', { name: 'apple juice', price_per_L: 1.8 });
    expect(await named(desk, 'apple juice')).toMatchObject({ price_per_kg: null, price_per_L: 1.8 });
    expect(await desk.fail('pantry:stock', { name: 'honey', price_per_kg: 2, price_per_L: 3 })).toMatchObject({
      path: ['price_per_L'],
    });
    await desk.ask('pantry:stock', { name: 'apple juice', price_per_L: null });
    expect(await named(desk, 'apple juice')).toMatchObject({ price_per_kg: null, price_per_L: null });
  });
});

describe('jars:start', () => {
  it('says what is left, what was used beyond the note, and what nobody counted; a new count settles it', async () => {
    const desk = await temporaryDesk();
    const { ask } = desk;
    await ask('pantry:stock', { name: 'raspberries', onHand_g: 100 });
    const held = {
      ...daysPlan.held,
      additions: [
        { ingredient: 'Raspberries, raw', mass_g: 75, state: 'fresh' as const },
        { ingredient: 'ginger', mass_g: 5, state: 'fresh' as const },
      ],
    };
    const { jars } = await ask('trials:save', { ...daysPlan, held });
    const [a = '', b = '', c = ''] = jars.map(({ id }) => id);
    expect((await ask('jars:start', { jars: [a] })).stock).toEqual([
      { name: 'raspberries', taken_g: 75, left_g: 25, short_g: null },
      { name: 'ginger', taken_g: 5, left_g: null, short_g: null },
    ]);
    expect((await ask('jars:start', { jars: [b] })).stock[0]).toMatchObject({ left_g: 0, short_g: 50 });
    expect((await ask('jars:start', { jars: [c] })).stock[0]).toMatchObject({ left_g: 0, short_g: 125 });
    expect(await named(desk, 'raspberries')).toMatchObject({ onHand_g: 0, short_g: 125 });
    await ask('undo:last', {});
    expect(await named(desk, 'raspberries')).toMatchObject({ onHand_g: 0, short_g: 50 });
    await ask('pantry:stock', { name: 'raspberries', onHand_g: 400 });
    expect(await named(desk, 'raspberries')).toMatchObject({ onHand_g: 400, short_g: null });
  });
});

describe('kitchen:change', () => {
  it('keeps a currency as it is written, without figures', async () => {
    const { ask, fail } = await temporaryDesk();
    expect(await ask('kitchen:change', { currency: '€' })).toMatchObject({ currency: '€' });
    expect(await ask('kitchen:change', { name: 'K' })).toMatchObject({ currency: '€' });
    expect(await fail('kitchen:change', { currency: '12' })).toMatchObject({ path: ['currency'] });
    expect(await ask('kitchen:change', { currency: null })).toMatchObject({ currency: null });
  });
});
