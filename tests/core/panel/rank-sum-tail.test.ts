import { describe, expect, it } from 'vitest';
import { rankSumDistribution } from '#core/panel/ranks/rank-sum-distribution.ts';
import { rankSumTail } from '#core/panel/ranks/rank-sum-tail.ts';
import { fc } from '#tests/properties.ts';

/** Mean ranks of values, ties sharing theirs. */
function ranks(values: readonly number[]): number[] {
  return values.map((value) => {
    const below = values.filter((each) => each < value).length;
    return below + (values.filter((each) => each === value).length + 1) / 2;
  });
}

const panels = fc
  .tuple(fc.integer({ min: 2, max: 5 }), fc.integer({ min: 2, max: 5 }))
  .chain(([tasters, samples]) =>
    fc.array(fc.array(fc.integer({ min: 0, max: 4 }), { minLength: samples, maxLength: samples }), {
      minLength: tasters,
      maxLength: tasters,
    }),
  )
  .map((values) => values.map(ranks));

/** Every ranking of every taster, one by one. */
function counted(blocks: readonly (readonly number[])[], seen: number): number {
  const size = blocks[0]?.length ?? 0;
  const orders = (rest: readonly number[]): number[][] =>
    rest.length === 0
      ? [[]]
      : rest.flatMap((first, at) => orders(rest.toSpliced(at, 1)).map((order) => [first, ...order]));
  let [reached, all] = [0, 0];
  const walk = (at: number, sums: readonly number[]): void => {
    const block = blocks[at];
    if (block === undefined) {
      const mean = blocks.length * (size + 1);
      all += 1;
      if (sums.reduce((sum, value) => sum + (2 * value - mean) ** 2, 0) >= seen) reached += 1;
      return;
    }
    for (const order of orders(block)) {
      walk(
        at + 1,
        sums.map((sum, place) => sum + (order[place] ?? 0)),
      );
    }
  };
  walk(0, new Array<number>(size).fill(0));
  return reached / all;
}

describe('rankSumTail(blocks, seen)', () => {
  it('is the share of all rankings whose sums lie as far apart or further', () => {
    for (const blocks of [
      [
        [1, 2, 3],
        [2, 1, 3],
        [1.5, 1.5, 3],
      ],
      [
        [1, 2, 3, 4],
        [4, 2.5, 2.5, 1],
      ],
      [
        [1.5, 1.5, 3.5, 3.5],
        [1, 2, 3, 4],
        [2, 2, 2, 4],
      ],
    ]) {
      for (const seen of [0, 8, 20, 40, 60]) {
        expect(rankSumTail(blocks, seen)).toBeCloseTo(counted(blocks, seen), 12);
      }
    }
  });

  it('is the sum over rankSumDistribution, falls as seen rises, and is 1 from zero', () => {
    fc.assert(
      fc.property(panels, fc.integer({ min: 0, max: 400 }), (blocks, seen) => {
        const size = blocks[0]?.length ?? 0;
        const states = rankSumDistribution(blocks);
        const tail = rankSumTail(blocks, seen);
        // Many ties among many cups may cost more steps than it allows itself: then it gives no figure, and the test below holds that.
        fc.pre(states !== null && tail !== null);
        const mean = blocks.length * (size + 1);
        const expected = states.reduce(
          (sum, { doubled, chance }) =>
            sum + (doubled.reduce((between, value) => between + (value - mean) ** 2, 0) >= seen ? chance : 0),
          0,
        );
        expect(tail).toBeCloseTo(expected, 12);
        expect(rankSumTail(blocks, seen + 1) ?? Number.NaN).toBeLessThanOrEqual(tail + 1e-12);
        expect(rankSumTail(blocks, 0)).toBeCloseTo(1, 12);
        expect(states.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 12);
        for (const { doubled } of states) expect([...doubled]).toEqual([...doubled].sort((a, b) => a - b));
      }),
      { numRuns: 200 },
    );
  });

  it('is null beyond its budget, and with more samples than it counts', () => {
    const block = [1, 2, 3, 4, 5];
    expect(rankSumTail([block, block, block], 10, 200)).toBeNull();
    const wide = Array.from({ length: 8 }, (_, at) => at + 1);
    expect(rankSumTail([wide, wide], 10)).toBeNull();
  });
});
