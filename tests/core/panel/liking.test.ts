import { describe, expect, it } from 'vitest';
import { holm } from '#core/panel/compare/holm.ts';
import { shrunkenWinner } from '#core/panel/compare/shrunken-winner.ts';
import { justAboutRight } from '#core/panel/tasters/just-about-right.ts';
import { likingDriver } from '#core/panel/tasters/liking-drivers.ts';

describe('justAboutRight', () => {
  it('weighs each side against those who found it right: shares, drops and penalty by hand', () => {
    const answers = [
      ...[7, 8, 9, 8].map((liking) => ({ position: 0, liking })),
      ...[5, 6, 7].map((liking) => ({ position: -1, liking })),
      ...[7, 8, 6].map((liking) => ({ position: 2, liking })),
    ];
    const { right, tooLittle, tooMuch } = justAboutRight(answers, 0.05);
    expect(right).toEqual({ n: 4, share: 0.4, liking: 8 });
    expect([tooLittle.share, tooLittle.drop, tooLittle.attend]).toEqual([0.3, 2, true]);
    expect(tooLittle.penalty).toBeCloseTo(0.6, 12);
    expect([tooMuch.drop, tooMuch.attend]).toEqual([1, true]);
    // Welch: t = 2/√(1/3 + (2/3)/4) = 2.828427; p = 0.04946056 (R 4.2.2, t.test).
    expect(tooLittle.p).toBeCloseTo(0.04946056, 7);
    expect(tooLittle.low ?? -1).toBeGreaterThan(0);
  });

  it('has nulls where a side is empty or stands alone', () => {
    const one = justAboutRight(
      [
        { position: 0, liking: 7 },
        { position: 1, liking: 5 },
      ],
      0.05,
    );
    expect(one.tooMuch).toMatchObject({ drop: 2, p: null, low: null });
    expect(one.tooLittle).toMatchObject({ n: 0, drop: null });
  });
});

describe('likingDriver', () => {
  const samples = [1, 2, 3, 4, 5, 6];
  const points = (slopes: number[]) =>
    slopes.flatMap((slope, taster) =>
      samples.map((sample) => ({
        taster: `t${taster}`,
        sample: `s${sample}`,
        attribute: sample,
        liking: 3 + taster + slope * sample + ([0.1, -0.1, 0.05, -0.15, 0.2, -0.1][(sample + taster) % 6] ?? 0),
      })),
    );

  it('finds a slope that all share, and draws single slopes toward it', () => {
    const driver = likingDriver(points([0.5, 0.7, 0.6, 0.55, 0.65]), 0.05);
    if ('code' in driver) throw new Error(driver.code);
    expect(driver.slope).toBeCloseTo(0.6, 1);
    expect(driver.low).toBeGreaterThan(0);
    for (const { own, slope } of driver.tasters) {
      expect(Math.abs(slope - driver.slope)).toBeLessThanOrEqual(Math.abs(own - driver.slope) + 1e-12);
    }
  });

  it('finds none where tasters pull apart', () => {
    const driver = likingDriver(points([1, -1, 0.8, -0.9]), 0.05);
    if ('code' in driver) throw new Error(driver.code);
    expect(driver.betweenTasters).toBeGreaterThan(0.5);
    expect(driver.low).toBeLessThan(0);
    expect(driver.high).toBeGreaterThan(0);
  });

  it('says that few jars cannot tell, nor one taster, nor an attribute that never moves', () => {
    expect(
      likingDriver(
        points([0.5, 0.6]).filter(({ attribute }) => attribute < 5),
        0.05,
      ),
    ).toEqual({ code: 'too-few-scores' });
    expect(likingDriver(points([0.5]), 0.05)).toEqual({ code: 'one-taster' });
    expect(
      likingDriver(
        points([0.5, 0.6]).map((point) => ({ ...point, attribute: 4 })),
        0.05,
      ),
    ).toEqual({ code: 'no-variation' });
  });
});

describe('holm and shrunkenWinner', () => {
  it('holm([0.01, 0.04, 0.03]) is [0.03, 0.06, 0.06] (R 4.2.2, p.adjust)', () => {
    expect(holm([0.01, 0.04, 0.03]).map((p) => Number(p.toFixed(12)))).toEqual([0.03, 0.06, 0.06]);
    expect(holm([0.9, 0.6])).toEqual([1, 1]);
    expect(holm([])).toEqual([]);
  });

  it('keeps a clear lead, and none of a lead that chance explains', () => {
    expect(shrunkenWinner([6, 4], 4)).toEqual({ winner: 0, expected: 5.75, kept: 0.75 });
    expect(shrunkenWinner([6, 4, 5], 0.8)).toEqual({ winner: 0, expected: 5, kept: 0 });
    expect(shrunkenWinner([5, 7, 6, 6, 6], 10).kept).toBeCloseTo(0.95, 12);
  });
});
