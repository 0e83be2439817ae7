import { describe, expect, it } from 'vitest';
import { OutOfDomain } from '#core/out-of-domain.ts';
import { type AttributeGoal, desirability, profileDesirability } from '#core/panel/compare/desirability.ts';
import { profileWinner } from '#core/panel/compare/profile-winner.ts';

const more: AttributeGoal = { goal: 'more', low: 4, high: 8 };

describe('desirability', () => {
  it.each([
    [3, more, 0],
    [7, more, 0.75],
    [9, more, 1],
    [7, { ...more, weight: 2 }, 0.5625],
    [5, { goal: 'less', low: 4, high: 8 }, 0.75],
    [5, { goal: 'target', low: 2, high: 8, target: 6 }, 0.75],
    [7, { goal: 'target', low: 2, high: 8, target: 6 }, 0.5],
  ] as [number, AttributeGoal, number][])('of %f for %j is %f, by hand', (value, goal, expected) => {
    expect(desirability(value, goal)).toBeCloseTo(expected, 12);
  });

  it('of a profile is the weighted geometric mean, and nothing when one attribute will not do', () => {
    expect(profileDesirability([7, 6], [more, more])).toBeCloseTo(Math.sqrt(0.75 * 0.5), 12);
    expect(profileDesirability([7, 6], [more, { ...more, importance: 3 }])).toBeCloseTo((0.75 * 0.5 ** 3) ** 0.25, 12);
    expect(profileDesirability([8, 4], [more, more])).toBe(0);
  });

  it('throws on goals out of order', () => {
    expect(() => desirability(5, { goal: 'more', low: 8, high: 4 })).toThrow(OutOfDomain);
    expect(() => desirability(5, { goal: 'target', low: 2, high: 8, target: 9 })).toThrow(OutOfDomain);
  });
});

describe('profileWinner', () => {
  // Every taster likes sample 1 better by far; samples 0 and 2 are the same.
  const profiles = Array.from({ length: 8 }, (_, taster) => [
    [5 + (taster % 2)],
    [7 + (taster % 2)],
    [5 + (taster % 2)],
  ]);
  const question = { profiles, goals: [more], draws: 400, seed: 3 };

  it('is sure of a sample that everyone puts first', () => {
    expect(profileWinner(question)).toMatchObject({ winner: 1, winShare: [0, 1, 0], draws: 400, stopped: false });
  });

  it('shares the wins of equal samples evenly', () => {
    const equal = { ...question, profiles: profiles.map(([one, , other]) => [one ?? [], other ?? []]) };
    expect(profileWinner(equal).winShare).toEqual([0.5, 0.5]);
  });

  it('repeats exactly with the same seed, and its interval holds the estimate', () => {
    const one = profileWinner(question);
    expect(profileWinner(question)).toEqual(one);
    expect(one.low[1] ?? 1).toBeLessThanOrEqual(one.desirability[1] ?? 0);
    expect(one.high[1] ?? 0).toBeGreaterThanOrEqual(one.desirability[1] ?? 1);
  });

  it('stops when told, and says how far it came', () => {
    const told: number[] = [];
    const answer = profileWinner({ ...question, onProgress: (done) => told.push(done) < 2 });
    expect([answer.draws, answer.stopped, told]).toEqual([200, true, [100, 200]]);
  });

  it('names no winner when nothing is acceptable, and null where an attribute has no score', () => {
    const answer = profileWinner({
      ...question,
      profiles: [
        [[1], [null]],
        [[2], [null]],
      ],
    });
    expect([answer.winner, answer.desirability]).toEqual([null, [0, null]]);
  });
});
