import { describe, expect, it } from 'vitest';
import { rankedChanges } from '#renderer/pages/tasting/ranked-changes.ts';
import { keyOf, scoresByKey, withKept } from '#renderer/pages/tasting/sheet-scores.ts';

const attribute = { name: 'place', kind: 'place' as const, low: 1, high: 3, lowWord: null, highWord: null } as never;
const rows = ['112', '345', '678'].map((code, at) => ({ sitting: 1, place: at + 1, code, replicate: 1 }));
const key = (at: number) => keyOf(rows[at] as (typeof rows)[number], { name: 'place' });
const nothingSent = () => undefined;

function changes(
  texts: Record<number, string>,
  held: Record<number, number>,
  areTiesMeant = false,
  sent = nothingSent as (key: string) => number | null | undefined,
) {
  const at = <Value>(all: Record<number, Value>) =>
    new Map(Object.entries(all).map(([place, value]) => [key(Number(place)), value]));
  return rankedChanges({ rows, attribute, areTiesMeant }, at(texts), at(held), sent);
}
const put = (at: number, place: number | null, text: string | null) =>
  expect.objectContaining({ kind: 'put', score: expect.objectContaining({ key: key(at), score: place, text }) });

describe('rankedChanges(ranking, texts, held, sent)', () => {
  it('keeps what is typed, and lets go what says what is stored', () => {
    expect(changes({ 0: '1', 1: '2' }, { 1: 2 })).toEqual([put(0, 1, '1'), { kind: 'let-go', key: key(1) }]);
  });

  it('takes a place away from both cups that hold it, unless ties are meant', () => {
    expect(changes({ 0: '2', 1: '2' }, { 0: 1 })).toEqual([put(0, null, null)]);
    expect(changes({ 0: '2', 1: '2' }, { 0: 1 }, true)).toEqual([put(0, 2, '2'), put(1, 2, '2')]);
  });

  it('sends nothing twice: what is on its way counts as stored', () => {
    expect(changes({ 0: '1' }, {}, false, () => 1)).toEqual([]);
    expect(changes({ 0: '3' }, {}, false, () => 1)).toEqual([put(0, 3, '3')]);
  });
});

describe('withKept(stored, taster, kept)', () => {
  it('puts what was kept in place of the same cell, of this taster alone', () => {
    const cell = { sample: '112', attribute: 'place', replicate: 1 };
    const stored = ['Ana', 'Ben'].map((taster) => ({ taster, ...cell, score: 1 }));
    const kept = (score: number | null) => withKept(stored, 'Ana', [{ key: key(0), text: null, ...cell, score }]);
    expect(kept(3)).toEqual([stored[1], { taster: 'Ana', ...cell, score: 3 }]);
    expect(kept(null)).toEqual([stored[1]]);
    expect([...scoresByKey(kept(3), 'Ana')]).toEqual([[key(0), 3]]);
  });
});
