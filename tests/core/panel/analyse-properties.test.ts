import { describe, expect, it } from 'vitest';
import { seededRandom } from '#core/numeric/seeded-random.ts';
import { RefusedInput } from '#core/panel/refused-input.ts';
import { fc } from '#tests/properties.ts';
import { analyse, codesOf, table } from './small-panel.ts';

describe('analysePanel does not care', () => {
  const random = seededRandom(99);
  const holed = table(
    Array.from({ length: 9 }, () =>
      Array.from({ length: 8 }, () => (random.uniform() < 0.2 ? null : random.below(10))),
    ),
    2,
  );
  const input = { scores: holed, control: 's1', levels: { s0: 1, s1: 2, s2: 4, s3: 8 } };

  it('in which order the scores come', () => {
    const one = analyse(input).attributes[0];
    const other = analyse({ ...input, scores: seededRandom(3).shuffled(holed) }).attributes[0];
    expect(other?.test?.f).toBeCloseTo(one?.test?.f ?? Number.NaN, 8);
    expect(other?.test?.dfError).toBeCloseTo(one?.test?.dfError ?? Number.NaN, 6);
    expect(other?.ranks?.p).toBeCloseTo(one?.ranks?.p ?? Number.NaN, 10);
  });

  it('where the scale begins and how wide its points are', () => {
    const one = analyse(input).attributes[0];
    const other = analyse({ ...input, scores: holed.map((score) => ({ ...score, score: 1000 + 7 * score.score })) })
      .attributes[0];
    expect(other?.test?.f).toBeCloseTo(one?.test?.f ?? Number.NaN, 7);
    expect((other?.variances.error ?? 0) / 49).toBeCloseTo(one?.variances.error ?? Number.NaN, 7);
    expect(other?.versusControl?.[0]?.p).toBeCloseTo(one?.versusControl?.[0]?.p ?? Number.NaN, 7);
    expect((other?.trend?.slope ?? 0) / 7).toBeCloseTo(one?.trend?.slope ?? Number.NaN, 8);
  });

  it('what else is scored beside it', () => {
    const beside = holed.map((score) => ({ ...score, attribute: 'fizz', score: 9 - score.score }));
    const alone = analyse(input).attributes[0];
    const together = analyse({ ...input, scores: [...holed, ...beside] }).attributes;
    expect(together[0]?.test).toEqual(alone?.test);
    expect(together[1]?.test?.f).toBeCloseTo(alone?.test?.f ?? Number.NaN, 8);
  });

  it('how odd the panel is: any scores give an answer of the contract’s shape', () => {
    const score = fc.record({
      taster: fc.constantFrom('a', 'b', 'c', 'd'),
      sample: fc.constantFrom('p', 'q', 'r'),
      attribute: fc.constantFrom('liking', 'fizz'),
      score: fc.oneof(fc.integer({ min: 0, max: 3 }), fc.double({ min: -1e6, max: 1e6, noNaN: true })),
      jar: fc.option(fc.constantFrom('1', '2', '3'), { nil: undefined }),
    });
    fc.assert(
      fc.property(fc.array(score, { minLength: 1, maxLength: 40 }), fc.boolean(), (scores, leveled) => {
        const extras = leveled ? { levels: { p: 1, q: 2, r: 3 }, control: 'p' } : {};
        const answer = analyse({ scores, ...extras });
        for (const { means, pairs } of answer.attributes) {
          for (const pair of pairs ?? []) {
            const letters = (name: string): string => means.find(({ sample }) => sample === name)?.letters ?? '';
            const shared = [...letters(pair.a)].some((letter) => letters(pair.b).includes(letter));
            expect(shared).toBe(pair.p >= 0.05);
          }
        }
      }),
      { numRuns: 150, seed: 20260413 },
    );
  });
});

describe('levels of any size', () => {
  const rows = table([
    [3, 5, 6, 5],
    [2, 5, 7, 6],
    [4, 5, 7, 5],
    [3, 6, 6, 6],
  ]);
  const trend = (scale: number, shift = 0) => {
    const levels = { s0: shift + scale, s1: shift + 2 * scale, s2: shift + 4 * scale, s3: shift + 7 * scale };
    return analyse({ scores: rows, levels }).attributes[0]?.trend;
  };

  it('scale slope, curvature and best level', () => {
    const one = trend(1);
    for (const scale of [1e-12, 3, 1e20]) {
      const other = trend(scale);
      expect((other?.slope ?? 0) * scale).toBeCloseTo(one?.slope ?? Number.NaN, 9);
      expect((other?.curvature ?? 0) * scale * scale).toBeCloseTo(one?.curvature ?? Number.NaN, 9);
      expect((other?.best?.level ?? 0) / scale).toBeCloseTo(one?.best?.level ?? Number.NaN, 8);
      expect((other?.best?.low ?? 0) / scale).toBeCloseTo(one?.best?.low ?? Number.NaN, 8);
    }
    expect((trend(1, 1000)?.best?.level ?? 0) - 1000).toBeCloseTo(one?.best?.level ?? Number.NaN, 8);
  });

  it('that all but coincide count as one, and levels no one can mean are refused', () => {
    const near = { s0: 1, s1: 1 + 1e-13, s2: 2, s3: 2 - 1e-14 };
    expect(codesOf(analyse({ scores: rows, levels: near }))).toContain('two-levels-only at trend.curvature');
    expect(codesOf(analyse({ scores: rows, levels: { s0: 3, s1: 3, s2: 3, s3: 3 } }))).toContain(
      'level-missing at trend',
    );
    expect(() => analyse({ scores: rows, levels: { s0: 1e300 } })).toThrow(RefusedInput);
  });

  it('with alpha at either end of what may be asked', () => {
    for (const alpha of [1e-9, 0.999999]) {
      expect(() =>
        analyse({ scores: rows, levels: { s0: 1, s1: 2, s2: 3, s3: 4 }, control: 's0', alpha }),
      ).not.toThrow();
    }
  });
});

describe('large panels', () => {
  it('five thousand tasters with holes are analysed in a moment, with every figure finite', () => {
    const random = seededRandom(6);
    const scores = Array.from({ length: 30_000 }, () => ({
      taster: `t${random.below(5000)}`,
      sample: `s${random.below(6)}`,
      attribute: 'liking',
      score: random.below(10),
    }));
    const answer = analyse({ scores, control: 's0', levels: { s0: 1, s1: 2, s2: 3, s3: 4, s4: 5, s5: 6 } });
    expect(answer.tasters.length).toBeGreaterThan(4900);
    expect(answer.attributes[0]?.test?.dfSample).toBe(5);
  });
});
