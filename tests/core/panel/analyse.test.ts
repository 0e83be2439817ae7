import { describe, expect, it } from 'vitest';
import { seededRandom } from '#core/numeric/seeded-random.ts';
import { analysePanel } from '#core/panel/analyse.ts';
import type { PanelScore } from '#core/panel/panel-analysis.ts';
import { RefusedInput } from '#core/panel/refused-input.ts';
import { analyse, codesOf, plain, table } from './small-panel.ts';

describe('analysePanel answers what it can, and says why not the rest', () => {
  it('one taster: means, but no test', () => {
    const answer = analyse({ scores: table([[3, 5, 4]]) });
    expect(answer.attributes[0]).toMatchObject({ test: null, pairs: null, ranks: null });
    expect(answer.attributes[0]?.means.map(({ mean }) => mean)).toEqual([3, 5, 4]);
    expect(codesOf(answer)).toContain('one-taster at test');
  });

  it('one taster with repeats: how well they repeat themselves', () => {
    const answer = analyse({ scores: table([[3, 4, 7, 8]], 2) });
    expect(answer.tasters[0]?.repeatability).toBeCloseTo(Math.SQRT1_2, 12);
    // One-way F by hand: between 16 on 1, within 1 on 2: F = 32, p = 0.02986.
    expect(answer.tasters[0]?.discriminationP).toBeCloseTo(0.02986, 4);
  });

  it('one sample: its mean, but nothing to compare', () => {
    const answer = analyse({ scores: table([[3], [5], [4]]) });
    expect(answer.attributes[0]).toMatchObject({ test: null, pairs: null, ranks: null });
    expect(codesOf(answer)).toContain('one-sample at test');
  });

  it.each([
    [
      'all scores equal',
      [
        [5, 5, 5],
        [5, 5, 5],
        [5, 5, 5],
      ],
      1,
    ],
    [
      'all equal with repeats',
      [
        [5, 5, 5, 5],
        [5, 5, 5, 5],
      ],
      2,
    ],
    [
      'tasters and samples explain everything',
      [
        [1, 2, 3],
        [2, 3, 4],
        [4, 5, 6],
      ],
      1,
    ],
  ])('%s: no-variation', (_, rows, repeats) => {
    const answer = analyse({ scores: table(rows, repeats) });
    expect(answer.attributes[0]?.test).toBeNull();
    expect(codesOf(answer)).toContain('no-variation at test');
  });

  it('repeats that never differ: the error is nil and the test is that of their means', () => {
    const twice = plain.map((row) => row.flatMap((score) => [score, score]));
    const once = analyse({ scores: table(plain) }).attributes[0];
    const answer = analyse({ scores: table(twice, 2) }).attributes[0];
    expect(answer?.test?.f).toBeCloseTo(once?.test?.f ?? Number.NaN, 9);
    expect(answer?.variances.error).toBe(0);
    expect(answer?.variances.tasterBySample).toBeCloseTo(once?.variances.error ?? Number.NaN, 9);
  });

  it('a sample that nobody tasted keeps its place among the means', () => {
    const answer = analyse({ scores: table(plain), levels: { s0: 1, s1: 2, s2: 3, s9: 4 }, control: 's8' });
    const untasted = answer.attributes[0]?.means.filter(({ n }) => n === 0);
    expect(untasted?.map(({ sample, mean }) => [sample, mean])).toEqual([
      ['s9', null],
      ['s8', null],
    ]);
    expect(codesOf(answer)).toContain('sample-untasted at means.3');
    expect(codesOf(answer)).toContain('no-control at versusControl');
  });

  it('a score outside the scale is left out, counted and said', () => {
    const scores = [...table(plain), { taster: 't9', sample: 's0', attribute: 'liking', score: 77 }];
    const answer = analyse({ scores, scales: { liking: [0, 10] } });
    expect(answer.attributes[0]?.scores).toBe(12);
    expect(codesOf(answer)).toContain('off-scale at scores');
  });

  it('every score off the scale still gives an answer', () => {
    const answer = analyse({ scores: table(plain), scales: { liking: [100, 200] } });
    expect(answer.attributes[0]).toMatchObject({ scores: 0, test: null });
  });

  it('counts missing scores by what is usual', () => {
    const holes = analyse({
      scores: table([
        [5, null, 8],
        [4, 6, 7],
        [6, 6, 9],
      ]),
    }).attributes[0];
    expect(holes?.missing).toBe(1);
    const repeats = analyse({
      scores: table(
        [
          [5, 6, 8, null],
          [4, 6, 7, 7],
          [6, 6, 9, 8],
        ],
        2,
      ),
    }).attributes[0];
    expect(repeats?.missing).toBe(1);
    // As many once as twice: twice was meant.
    expect(
      analyse({
        scores: table(
          [
            [5, 6],
            [4, null],
          ],
          2,
        ),
      }).attributes[0]?.missing,
    ).toBe(1);
  });

  it('the ranking leaves out whoever missed a sample, and says so', () => {
    const answer = analyse({ scores: table([[5, null, 8], ...plain]) });
    expect(answer.attributes[0]?.ranks?.blocks).toBe(4);
    expect(codesOf(answer)).toContain('incomplete-panel at ranks');
  });

  it('without levels or a level, the trend says so', () => {
    expect(codesOf(analyse({ scores: table(plain) }))).toContain('no-levels at trend');
    const answer = analyse({ scores: table(plain), levels: { s0: 1, s2: 3 } });
    expect(codesOf(answer)).toContain('level-missing at trend');
    expect(codesOf(answer)).toContain('two-levels-only at trend.curvature');
    expect(answer.attributes[0]?.trend?.slope).toBeCloseTo((29 / 4 - 18 / 4) / 2, 9);
  });

  it('labels such as __proto__ and constructor are only labels', () => {
    const names = ['__proto__', 'constructor', 'toString'];
    const scores = plain.flatMap((row, taster) =>
      row.map((score, place) => ({ taster: `${taster}`, sample: names[place] ?? '', attribute: '__proto__', score })),
    );
    const found = analyse({ scores, levels: {}, scales: {} }).attributes[0];
    expect(found?.test?.f).toBeCloseTo(analyse({ scores: table(plain) }).attributes[0]?.test?.f ?? Number.NaN, 9);
    expect(codesOf(analyse({ scores, levels: {} }))).toContain('level-missing at trend');
  });
});

describe('analysePanel refuses', () => {
  const twice = [1, 2].map((score) => ({ taster: 'a', sample: 'b', attribute: 'c', score, replicate: 1 }));

  it('the same explicit replicate twice, at its path', () => {
    try {
      analysePanel({ scores: [...table(plain), ...twice] });
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(RefusedInput);
      expect((error as RefusedInput).path).toEqual(['scores', 13, 'replicate']);
    }
  });

  it('but not the same replicate of two jars, nor scores without a number', () => {
    const jars = twice.map((score, index) => ({ ...score, jar: `${index}` }));
    expect(() => analyse({ scores: jars })).not.toThrow();
    expect(() => analyse({ scores: twice.map(({ replicate: _, ...score }) => score) })).not.toThrow();
  });
});

describe('the best level of liking', () => {
  const days = [1, 2, 3, 4, 5];
  const levels = Object.fromEntries(days.map((day, index) => [`s${index}`, day]));
  const wobble = [0.3, -0.2, 0.1, -0.4, 0.2, 0.1, -0.3, 0.4, -0.1, -0.1];
  const liking = (shape: (day: number) => number): PanelScore[] =>
    table(
      Array.from({ length: 6 }, (_, taster) => days.map((day) => shape(day) + (wobble[(taster * 3 + day) % 10] ?? 0))),
    );
  const trend = (shape: (day: number) => number) => analyse({ scores: liking(shape), levels });

  it('lies at the top of a hill, its interval around it', () => {
    const best = trend((day) => 8 - (day - 3.2) ** 2).attributes[0]?.trend?.best;
    expect(best?.level).toBeCloseTo(3.2, 0);
    expect(best?.low).toBeLessThan(best?.level ?? 0);
    expect(best?.high).toBeGreaterThan(best?.level ?? 9);
  });

  it.each([
    ['rising-at-end', (day: number) => 8 - 0.3 * (day - 8) ** 2],
    ['falling-from-start', (day: number) => 8 - 0.3 * (day + 2) ** 2],
    ['no-turning-point', (day: number) => 3 + (day - 3) ** 2],
  ])('is null with the reason %s', (code, shape) => {
    const answer = trend(shape);
    expect(answer.attributes[0]?.trend?.best).toBeNull();
    expect(codesOf(answer)).toContain(`${code} at trend.best`);
  });

  it('has an open end where the bend is not clear', () => {
    const noise = seededRandom(4);
    const scores = table(
      Array.from({ length: 5 }, () => days.map((day) => 5 - 0.3 * (day - 3) ** 2 + 4 * noise.uniform())),
    );
    const best = analyse({ scores, levels }).attributes[0]?.trend?.best;
    expect(best).not.toBeNull();
    expect(best?.low === null || best?.high === null).toBe(true);
  });
});

describe('tasters’ form', () => {
  it('points out who turned the scale round', () => {
    const scores = table([
      [1, 3, 5, 7, 9],
      [2, 3, 4, 7, 8],
      [1, 4, 5, 6, 9],
      [9, 7, 6, 2, 1],
    ]);
    const form = analyse({ scores }).tasters;
    expect(form[3]?.agreement).toBeLessThan(-0.9);
    expect(form[3]?.reasons.map(({ code }) => code)).toContain('scale-turned-round');
    expect(form[0]?.reasons.map(({ code }) => code)).toEqual(['no-repeats', 'no-repeats']);
  });
});
