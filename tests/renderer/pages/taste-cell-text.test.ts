import { describe, expect, it } from 'vitest';
import { readCell, typeInto } from '#renderer/pages/tasting/cell-text.ts';

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
