import { describe, expect, it } from 'vitest';
import { bottleDraft, bottleKept, keptBottle } from '#renderer/pages/bottle-label/use-bottle-draft.ts';

const usual = { name: 'Apricot', base: 'kombucha', volume: '', bestBefore: '', lot: '2026-05-A', maker: '' };
const typed = { ...usual, name: 'Apricot No. 1', volume: '330', bestBefore: '2026-08-01' };

describe('the words of a bottle label', () => {
  it('come back as they were typed, by way of the kitchen', () => {
    expect(bottleDraft(usual, keptBottle(JSON.parse(JSON.stringify(bottleKept(usual, typed)))))).toEqual(typed);
  });

  it('follow the recipe where nothing was typed', () => {
    const renamed = { ...usual, base: 'water kefir' };
    expect(bottleDraft(renamed, bottleKept(usual, typed))).toEqual({ ...typed, base: 'water kefir' });
  });

  it('never carry the lot and the day of one batch over to the next', () => {
    const next = { ...usual, lot: '2026-06-A' };
    const kept = bottleKept(usual, { ...typed, lot: '2026-05-B' });
    expect(bottleDraft(next, kept)).toEqual({ ...next, name: 'Apricot No. 1', volume: '330' });
  });

  it('are as usual where what was kept is none', () => {
    for (const body of [null, 3, [], {}, { typed: [], usualLot: '' }]) expect(keptBottle(body)).toBeNull();
    expect(keptBottle({ typed: { name: 3, lot: 'B', other: 'x' }, usualLot: '' })).toEqual({
      typed: { lot: 'B' },
      usualLot: '',
    });
  });
});
