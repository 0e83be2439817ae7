import { describe, expect, it } from 'vitest';
import { laterBy } from '#core/trial/moment.ts';
import type { PlanInput } from '#core/trial/plan-input.ts';
import { planTrial } from '#core/trial/plan-trial.ts';
import { fc } from '#tests/properties.ts';
import { pantryVolume, workingPlan } from './sample-plan.ts';

const plan = (change: Partial<PlanInput> = {}) => planTrial({ ...workingPlan, ...change }, pantryVolume);

describe('planTrial(plan)', () => {
  it('gives each level its jar, in order, with dates of a staggered pull in the plan’s own offset', () => {
    const { jars, feasible, problems } = plan();
    expect(problems).toEqual([]);
    expect(feasible).toBe(true);
    expect(jars.map(({ label, level, isControl, start, pull }) => [label, level, isControl, start, pull])).toEqual([
      ['A', '1 day', false, '2026-05-01T09:00:00+02:00', '2026-05-02T09:00:00+02:00'],
      ['B', '2 days', true, '2026-05-01T09:00:00+02:00', '2026-05-03T09:00:00+02:00'],
      ['C', '3 days', false, '2026-05-01T09:00:00+02:00', '2026-05-04T09:00:00+02:00'],
    ]);
    expect(jars.every(({ base_mL, additions }) => base_mL === 800 && additions[0]?.mass_g === 75)).toBe(true);
  });

  it('a staggered start pulls all jars together and starts the longest first', () => {
    const { jars } = plan({ calendar: 'staggered-start' });
    expect(new Set(jars.map(({ pull }) => pull))).toEqual(new Set(['2026-05-04T09:00:00+02:00']));
    expect(jars.map(({ start }) => start.slice(0, 10))).toEqual(['2026-05-03', '2026-05-02', '2026-05-01']);
  });

  it('says that a staggered start moves the base’s age and a staggered pull the cold storage, and that the control is today’s way', () => {
    const start = plan({ calendar: 'staggered-start' }).notes.map(({ code }) => code);
    const pull = plan().notes.map(({ code }) => code);
    expect(start).toContain('base-age-moves');
    expect(start).not.toContain('cold-storage-moves');
    expect(pull).toContain('cold-storage-moves');
    expect(pull).toContain('control-is-today');
    expect(pull).toContain('one-jar-a-level');
    expect(plan({ replicates: 2, baseAvailable_mL: 9000 }).notes.map(({ code }) => code)).not.toContain(
      'one-jar-a-level',
    );
  });

  it('replicates are jars of their own: A1, A2', () => {
    const { jars } = plan({ replicates: 2, baseAvailable_mL: 9000 });
    expect(jars.map(({ label }) => label)).toEqual(['A1', 'A2', 'B1', 'B2', 'C1', 'C2']);
  });

  it('an amount level weighs the held additions in proportion; 0 g is the plain base', () => {
    const { jars, problems } = plan({
      factor: 'amount',
      levels: [
        { name: 'none', value: 0 },
        { name: '50 g', value: 50 },
      ],
      control: '50 g',
      held: {
        ...workingPlan.held,
        days: 2,
        additions: [
          { ingredient: 'raspberries', mass_g: 30, state: 'fresh' },
          { ingredient: 'ginger root', mass_g: 10, state: 'fresh' },
        ],
      },
    });
    expect(problems).toEqual([]);
    expect(jars[0]?.additions).toEqual([]);
    expect(jars[1]?.additions.map(({ mass_g }) => mass_g)).toEqual([37.5, 12.5]);
  });

  it('state and cover levels may be told by their names', () => {
    const state = plan({
      factor: 'state',
      levels: [{ name: 'fresh' }, { name: 'Frozen' }],
      control: 'fresh',
      held: { ...workingPlan.held, days: 3 },
    });
    expect(state.problems).toEqual([]);
    expect(state.jars.map(({ additions }) => additions[0]?.state)).toEqual(['fresh', 'frozen']);
    const cover = plan({
      factor: 'cover',
      levels: [{ name: 'cloth' }, { name: 'airlock' }],
      control: 'cloth',
      held: { ...workingPlan.held, days: 3 },
    });
    expect(cover.problems).toEqual([]);
    expect(cover.formulas.map((formula) => formula?.cover)).toEqual(['cloth', 'airlock']);
  });

  it('juice beside the fruit stays liquid where the fruit is fresh or frozen', () => {
    const { jars } = plan({
      factor: 'state',
      levels: [{ name: 'fresh' }, { name: 'frozen' }],
      control: 'fresh',
      held: {
        days: 2,
        additions: [
          { ingredient: 'plums', mass_g: 80, state: 'fresh' },
          { ingredient: 'lemon juice', mass_g: 10, state: 'liquid' },
        ],
        also: {},
      },
    });
    expect(jars.map(({ additions }) => additions.map(({ state }) => state))).toEqual([
      ['fresh', 'liquid'],
      ['frozen', 'liquid'],
    ]);
  });

  it('a measure as written stays only with the jar that has its weight', () => {
    const { jars } = plan({
      factor: 'amount',
      levels: [
        { name: 'a handful', value: 30 },
        { name: 'double', value: 60 },
      ],
      control: 'a handful',
      held: {
        days: 2,
        additions: [{ ingredient: 'raspberries', mass_g: 30, state: 'fresh', asWritten: 'a handful' }],
        also: {},
      },
    });
    expect(jars.map(({ additions }) => additions[0]?.asWritten)).toEqual(['a handful', undefined]);
  });

  it('writes its sentences in the measures it is given', () => {
    const cups = { volume: (mL: number) => `${(mL / 236.588).toFixed(1)} cups`, temperature: () => '' };
    const { problems } = planTrial({ ...workingPlan, baseAvailable_mL: 2000 }, pantryVolume, cups);
    expect(problems[0]?.message).toContain('need 10.1 cups; there are 8.5 cups');
  });

  it('a formula trial tells which, not why', () => {
    const { problems, notes } = plan({
      factor: 'formula',
      levels: [
        { name: 'red', additions: [{ ingredient: 'raspberries', mass_g: 80, state: 'fresh' }], days: 2 },
        { name: 'gold', additions: [{ ingredient: 'apricots', mass_g: 60, state: 'frozen' }], days: 3 },
      ],
      control: 'red',
    });
    expect(problems).toEqual([]);
    expect(notes.map(({ code }) => code)).toContain('which-not-why');
  });

  it('is the same for the same seed, and only the fill order moves with another', () => {
    const order = (seed: number) => plan({ seed }).notes.find(({ code }) => code === 'fill-order')?.message;
    expect(plan()).toEqual(plan());
    expect(new Set(Array.from({ length: 12 }, (_, seed) => order(seed))).size).toBeGreaterThan(2);
    expect({ ...plan({ seed: 8 }), notes: [] }).toEqual({ ...plan({ seed: 9 }), notes: [] });
  });

  it('never promises more base than there is, never pulls before the start, whatever the numbers (property)', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -5, max: 30, noNaN: true }), { minLength: 1, maxLength: 6 }),
        fc.integer({ min: 1, max: 4 }),
        fc.double({ min: 1, max: 1500, noNaN: true }),
        fc.constantFrom('staggered-start' as const, 'staggered-pull' as const),
        (days, replicates, baseEach_mL, calendar) => {
          const levels = days.map((value, index) => ({ name: `L${index}`, value }));
          const result = plan({ levels, control: 'L0', replicates, baseEach_mL, calendar });
          expect(result.feasible).toBe(result.problems.length === 0);
          if (!result.feasible) return;
          expect(result.jars).toHaveLength(days.length * replicates);
          expect(result.jars.reduce((sum, { base_mL }) => sum + base_mL, 0)).toBeLessThanOrEqual(3000 * (1 + 1e-9));
          for (const { start, pull } of result.jars) expect(Date.parse(pull)).toBeGreaterThan(Date.parse(start));
        },
      ),
      { seed: 3 },
    );
  });
});

describe('laterBy(moment, hours)', () => {
  it('keeps the offset, crosses days, and refuses what is no moment', () => {
    expect(laterBy('2026-05-01T09:00:00+02:00', 36)).toBe('2026-05-02T21:00:00+02:00');
    expect(laterBy('2026-02-28T23:30:00-05:30', 1)).toBe('2026-03-01T00:30:00-05:30');
    expect(laterBy('2026-05-01T09:00:00Z', -10)).toBe('2026-04-30T23:00:00Z');
    expect(() => laterBy('soon', 1)).toThrow('moment is soon');
  });
});
