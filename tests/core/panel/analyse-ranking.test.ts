import { describe, expect, it } from 'vitest';
import { analyseRanking } from '#core/panel/analyse-ranking.ts';
import { compactLetters } from '#core/panel/compare/compact-letters.ts';
import { RefusedInput } from '#core/panel/refused-input.ts';

const ranks = (rows: number[][]) =>
  rows.flatMap((row, taster) => row.map((rank, place) => ({ taster: `${taster}`, sample: 'abcd'[place] ?? '', rank })));

describe('analyseRanking', () => {
  it('seven tasters of one mind: sums, Friedman, W of 1, letters', () => {
    const found = analyseRanking(ranks(new Array(7).fill([1, 2, 3])), 0.05);
    expect(found.samples.map(({ rankSum }) => rankSum)).toEqual([7, 14, 21]);
    expect(found.ranks).toMatchObject({ chiSquare: 14, df: 2, kendallW: 1, exact: true, blocks: 7 });
    // Six of the 6⁷ rankings are as unanimous as this.
    expect(found.ranks?.p).toBeCloseTo(6 / 6 ** 7, 15);
    // 10 is the exact 5 % difference for three samples and seven tasters.
    expect([found.criticalDifference, found.criticalIsExact]).toEqual([10, true]);
    expect(found.samples.map(({ letters }) => letters)).toEqual(['a', 'ab', 'b']);
  });

  it('leaves out who did not rank all, and says so; refuses a sample ranked twice', () => {
    const given = ranks([
      [1, 2, 3],
      [1, 3, 2],
      [2, 1, 3],
    ]);
    const found = analyseRanking(given.slice(0, -1), 0.05);
    expect(found.ranks?.blocks).toBe(2);
    expect(found.reasons.map(({ code }) => code)).toEqual(['incomplete-panel']);
    expect(() => analyseRanking([...given, ...given.slice(0, 1)], 0.05)).toThrow(RefusedInput);
  });

  it('one taster: sums, no test', () => {
    expect(analyseRanking(ranks([[1, 2, 3]]), 0.05)).toMatchObject({ ranks: null, criticalDifference: null });
  });
});

describe('compactLetters', () => {
  it.each([
    [[3, 2, 1], [], ['a', 'a', 'a']],
    [[3, 2, 1], [[0, 2]], ['a', 'ab', 'b']],
    [
      [1, 2, 3],
      [
        [0, 1],
        [0, 2],
        [1, 2],
      ],
      ['c', 'b', 'a'],
    ],
    [
      [4, 3, 2, 1],
      [
        [0, 3],
        [1, 2],
      ],
      ['ab', 'ac', 'bd', 'cd'],
    ],
  ] as [number[], number[][], string[]][])('means %j with %j different: %j', (means, pairs, letters) => {
    expect(
      compactLetters(
        means,
        pairs.map(([a = 0, b = 0]) => ({ a, b })),
      ),
    ).toEqual(letters);
  });
});
