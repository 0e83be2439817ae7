import { describe, expect, it } from 'vitest';
import { aloneDraftOf, noDraft, placesInOrder } from '#renderer/pages/tasting/alone-draft.ts';
import { refusedGroups } from '#renderer/pages/tasting/refused-groups.ts';
import { sheetProgress, sheetRows } from '#renderer/pages/tasting/sheet-progress.ts';
import { codeFault } from '#renderer/pages/tasting/turn-over.tsx';
import { missedRemark, saysMissed, withoutMissed } from '#shared/missed-sample.ts';
import { idOf } from '#tests/renderer/small-kitchen.ts';

const attribute = (name: string) => ({
  id: idOf(1),
  name,
  kind: 'scale' as const,
  low: 0,
  high: 10,
  lowWord: null,
  highWord: null,
});
const order = (name: string, ...sittings: string[][]) => ({
  taster: idOf(name.length),
  name,
  warnings: [],
  sittings: sittings.map((codes, place) => ({ sitting: place + 1, codes })),
});
const score = (taster: string, sample: string, name: string, replicate = 1) => ({
  taster,
  sample,
  attribute: name,
  replicate,
  score: 5,
});

describe('sheetRows', () => {
  it('follows the serving order, and counts the servings of a sample over all sittings', () => {
    const rows = sheetRows(order('Ann', ['274', '613'], ['613', '274']));
    expect(rows.map(({ code, place, replicate }) => `${place} ${code} ${replicate}`)).toEqual([
      '1 274 1',
      '2 613 1',
      '3 613 2',
      '4 274 2',
    ]);
    // Eight samples cut into two sittings are served once each.
    expect(sheetRows(order('Ann', ['111', '222'], ['333', '444'])).every(({ replicate }) => replicate === 1)).toBe(
      true,
    );
  });
});

const sample = (code: string, why?: string) => ({
  id: `00000000-0000-7000-8000-000000000${code}`,
  code,
  served_mL: null,
  jar: null,
  takenOut: why === undefined ? null : { at: '2026-05-01T08:00:00.000Z', why },
});

describe('sheetProgress', () => {
  const tasting = {
    orders: [order('Ann', ['274', '613']), order('Benno', ['613', '274'])],
    attributes: [attribute('tang'), attribute('fizz')],
    sampleList: [sample('274'), sample('613')],
  };

  it('names what each sheet lacks: a whole sample, or single attributes', () => {
    const [ann, benno] = sheetProgress(
      tasting,
      [score('Ann', '274', 'tang'), score('Ann', '274', 'fizz'), score('Ann', '613', 'fizz')],
      [],
    );
    expect(ann).toMatchObject({
      scores: 3,
      expected: 4,
      lacks: [{ code: '613', attributes: ['tang'], isWhole: false }],
    });
    expect(benno?.lacks.map(({ code, isWhole }) => `${code} ${isWhole}`)).toEqual(['613 true', '274 true']);
  });

  it('does not wait for a missed sample, unless it was scored after all', () => {
    const remarks = [{ taster: 'Ann', sample: '613', words: 'missed: the glass broke' }];
    const full = [score('Ann', '274', 'tang'), score('Ann', '274', 'fizz')];
    expect(sheetProgress(tasting, full, remarks)[0]).toMatchObject({ missed: ['613'], lacks: [] });
    const begun = [...full, score('Ann', '613', 'tang')];
    expect(sheetProgress(tasting, begun, remarks)[0]).toMatchObject({ missed: [], lacks: [{ code: '613' }] });
  });
});

describe('a sample that was taken out', () => {
  it('is neither waited for nor counted', () => {
    const tasting = {
      orders: [order('Ann', ['274', '613'])],
      attributes: [attribute('tang')],
      sampleList: [sample('274'), sample('613', 'mould')],
    };
    const full = [score('Ann', '274', 'tang'), score('Ann', '613', 'tang')];
    expect(sheetProgress(tasting, full, [])[0]).toMatchObject({ scores: 1, expected: 1, lacks: [], missed: [] });
  });
});

describe('a missed sample', () => {
  it('is said in its remark, and keeps what was said besides', () => {
    expect(missedRemark('')).toBe('missed');
    expect(missedRemark('too cold')).toBe('missed: too cold');
    expect(missedRemark('missed: too cold')).toBe('missed: too cold');
    expect(withoutMissed('missed: too cold')).toBe('too cold');
    expect(withoutMissed('missed')).toBe('');
    expect(saysMissed('missed the fizz')).toBe(false);
  });
});

describe('tasting alone', () => {
  it('turns a serving order into places of cups, each once', () => {
    expect(placesInOrder(order('Ann', ['613', '274', '859']))).toEqual([2, 1, 3]);
  });

  it('takes up a draft as it was left, and begins anew from anything else', () => {
    expect(aloneDraftOf({ step: 2, texts: { '1/a': '5' }, codes: { '1': 7 } })).toEqual({
      step: 2,
      texts: { '1/a': '5' },
      codes: {},
    });
    expect(aloneDraftOf(null)).toEqual(noDraft);
    expect(aloneDraftOf({ step: 9 })).toEqual(noDraft);
  });

  it('says why a code can’t stand under a cup', () => {
    const known = ['274', '613'];
    expect(codeFault('27', 1, { '1': '27' }, known)).toBeUndefined();
    expect(codeFault('999', 1, { '1': '999' }, known)).toContain('999');
    expect(codeFault('274', 2, { '1': '274', '2': '274' }, known)).toContain('two cups');
    expect(codeFault('274', 1, { '1': '274', '2': '613' }, known)).toBeUndefined();
  });
});

describe('refusedGroups', () => {
  it('says one reason of one row once, with how many cells it holds for', () => {
    const zoe = { row: 3, column: 'taster', code: 'unknown-taster', message: 'Zoe does not taste.' };
    const groups = refusedGroups([zoe, zoe, { ...zoe, row: 4 }, { ...zoe, column: 'tang', message: 'off' }]);
    expect(groups.map(({ row, message, cells }) => `${row} ${message} ${cells}`)).toEqual([
      '3 Zoe does not taste. 2',
      '4 Zoe does not taste. 1',
      '3 off 1',
    ]);
  });
});
