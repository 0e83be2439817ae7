import { describe, expect, it } from 'vitest';
import { cellSteps, cellText, cellWord, isWholePlace, readCell, typeInto } from '#renderer/pages/tasting/cell-text.ts';

const tang = { name: 'tang', low: 0, high: 10 };
const liking = { name: 'liking', low: 1, high: 9 };
const hundred = { name: 'colour', low: 0, high: 100 };

/** Types key after key into an empty cell. */
function typed(keys: string, scale: typeof tang): string {
  return [...keys].reduce((text, key) => typeInto(text, text + key, scale), '');
}

describe('typeInto', () => {
  it('takes one digit for a whole number, and 1 then 0 for ten', () => {
    expect(typed('7', tang)).toBe('7');
    expect(typed('10', tang)).toBe('10');
  });

  it('begins anew with a digit that would leave the scale', () => {
    expect(typed('57', tang)).toBe('7');
    expect(typed('104', tang)).toBe('4');
    expect(typed('98', liking)).toBe('8');
    expect(typed('98', hundred)).toBe('98');
  });

  it('takes halves with a comma or a point, and a leading minus', () => {
    expect(typed('7,5', tang)).toBe('7,5');
    expect(typed('7.5', tang)).toBe('7.5');
    expect(typed('-2', { name: 'bias', low: -3, high: 3 })).toBe('-2');
  });

  it('takes the whole score back, and lets a marked score be typed over', () => {
    expect(typeInto('10', '1', tang, true)).toBe('');
    expect(typeInto('10', '1', tang)).toBe('1');
  });
});

describe('readCell', () => {
  it('reads nothing, a score, and half a decimal as its whole part', () => {
    expect(readCell('', tang)).toEqual({ kind: 'none' });
    expect(readCell('7,5', tang)).toEqual({ kind: 'score', score: 7.5 });
    expect(readCell('7,', tang)).toEqual({ kind: 'score', score: 7 });
    expect(readCell('0', tang)).toEqual({ kind: 'score', score: 0 });
  });

  it('says why it can’t be kept', () => {
    expect(readCell('0', liking)).toEqual({ kind: 'fault', message: 'liking goes from 1 to 9; 0 is outside.' });
    expect(readCell('10,5', tang)).toMatchObject({ kind: 'fault' });
    expect(readCell('x', tang)).toEqual({ kind: 'fault', message: '“x” is not a number.' });
  });
});

describe('a just-about-right answer', () => {
  const sweetness = { name: 'sweetness', kind: 'just-about-right' as const, low: -2, high: 2 };

  it('is typed with the keys 1 to 5 and stored from −2 to 2, and shown again as its key', () => {
    expect([1, 2, 3, 4, 5].map((key) => readCell(String(key), sweetness))).toEqual(
      [-2, -1, 0, 1, 2].map((score) => ({ kind: 'score', score })),
    );
    for (const score of [-2, -1, 0, 1, 2]) {
      expect(readCell(cellText(sweetness, score), sweetness)).toEqual({ kind: 'score', score });
    }
    expect([-2, 0, 2].map((score) => cellWord(sweetness, score))).toEqual([
      'much too little',
      'just right',
      'much too much',
    ]);
    expect(cellSteps(sweetness).map(({ text, word }) => `${text} ${word}`)).toContain('4 too much');
  });

  it('is replaced by the next digit, and names its keys where another was pressed', () => {
    expect(typeInto('3', '34', sweetness)).toBe('4');
    for (const text of ['0', '6', '-2', '2,5', 'x']) {
      expect(readCell(text, sweetness)).toEqual({
        kind: 'fault',
        message: 'sweetness takes the keys 1 to 5: 1 is “much too little”, 3 “just right”, 5 “much too much”.',
      });
    }
  });
});

describe('a place', () => {
  const four = { name: 'place', kind: 'place' as const, low: 1, high: 4 };
  const twelve = { ...four, high: 12 };

  it('is whole after one digit, unless a second could follow', () => {
    expect(['1', '4', '0', '5', ''].map((text) => isWholePlace(text, four))).toEqual([true, true, false, false, false]);
    expect(['1', '2', '12', '13'].map((text) => isWholePlace(text, twelve))).toEqual([false, true, true, false]);
    expect(isWholePlace('7', tang)).toBe(false);
  });

  it('is a whole number from 1 to the last', () => {
    expect(readCell('4', four)).toEqual({ kind: 'score', score: 4 });
    for (const text of ['0', '5', '1.5', '-1']) expect(readCell(text, four)).toMatchObject({ kind: 'fault' });
  });
});
