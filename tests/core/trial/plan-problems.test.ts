import { describe, expect, it } from 'vitest';
import type { PlanInput } from '#core/trial/plan-input.ts';
import { planTrial } from '#core/trial/plan-trial.ts';
import { pantryVolume, workingPlan } from './sample-plan.ts';

const plan = (change: Partial<PlanInput> = {}) => planTrial({ ...workingPlan, ...change }, pantryVolume);
const codes = (change: Partial<PlanInput>) =>
  plan(change).problems.map(({ code, path }) => `${code} at ${path.join('.')}`);

describe('planTrial(plan) names what can’t work, at its field', () => {
  it('not enough base, with three ways out', () => {
    expect(codes({ baseAvailable_mL: 2000 })).toEqual(['not-enough-base at baseAvailable_mL']);
    const { message } = plan({ baseAvailable_mL: 2000 }).problems[0] ?? { message: '' };
    expect(message).toContain('400 mL more');
    expect(message).toContain('666 mL');
  });
  it('a jar overfull, with how much would fit', () => {
    expect(codes({ baseEach_mL: 980 })).toEqual(['jar-overfull at baseEach_mL']);
    const fits = Number(/Pour (\d+) mL/.exec(plan({ baseEach_mL: 980 }).problems[0]?.message ?? '')?.[1]);
    expect(codes({ baseEach_mL: fits })).toEqual([]);
  });
  it('two factors moved at once', () => {
    const additions = [{ ingredient: 'plums', mass_g: 75, state: 'fresh' as const }];
    expect(
      codes({
        levels: [
          { name: '1 day', value: 1 },
          { name: '2 days', value: 2, additions },
        ],
      }),
    ).toEqual(['two-factors-moved at levels.1.additions']);
    const fruit = (ingredient: string, mass_g: number, state: 'fresh' | 'frozen') => ({
      name: ingredient,
      additions: [{ ingredient, mass_g, state }],
    });
    const held = { ...workingPlan.held, days: 2 };
    const base = { factor: 'fruit', control: 'plums', held } as const;
    expect(codes({ ...base, levels: [fruit('plums', 75, 'fresh'), fruit('pears', 75, 'fresh')] })).toEqual([]);
    expect(codes({ ...base, levels: [fruit('plums', 75, 'fresh'), fruit('pears', 95, 'fresh')] })).toEqual([
      'two-factors-moved at levels.1.additions',
    ]);
    expect(codes({ ...base, levels: [fruit('plums', 75, 'fresh'), fruit('pears', 75, 'frozen')] })).toEqual([
      'two-factors-moved at levels.1.additions',
    ]);
  });
  it('a second factor between any two levels, the fruit of a state trial, a weight that says two things', () => {
    const fruit = (name: string, ingredient: string, mass_g: number, state: 'fresh' | 'frozen' = 'fresh') => ({
      name,
      additions: [{ ingredient, mass_g, state }],
    });
    const held = { also: {}, additions: [], days: 2 };
    const plain = { name: 'plain', additions: [] };
    const moved = { factor: 'fruit', control: 'plain', held } as const;
    expect(codes({ ...moved, levels: [plain, fruit('a', 'raspberries', 50), fruit('b', 'cherries', 150)] })).toEqual([
      'two-factors-moved at levels.2.additions',
    ]);
    const state = { factor: 'state', control: 'fresh', held } as const;
    expect(
      codes({ ...state, levels: [fruit('fresh', 'raspberries', 50), fruit('frozen', 'mangos', 50, 'frozen')] }),
    ).toEqual(['two-factors-moved at levels.1.additions']);
    expect(
      codes({
        ...state,
        levels: [fruit('fresh', 'strawberries', 50), fruit('frozen', 'strawberries, frozen', 50, 'frozen')],
      }),
    ).toEqual([]);
    const amount = { factor: 'amount', control: 'a', held } as const;
    expect(codes({ ...amount, levels: [{ ...fruit('a', 'plums', 100), value: 50 }, fruit('b', 'plums', 80)] })).toEqual(
      ['level-value-missing at levels.0'],
    );
  });
  it('what is held stays in every jar of a fruit trial', () => {
    const { jars, problems } = plan({
      factor: 'fruit',
      levels: [
        { name: 'pear', additions: [{ ingredient: 'pears', mass_g: 60, state: 'fresh' }] },
        { name: 'plum', additions: [{ ingredient: 'plums', mass_g: 60, state: 'fresh' }] },
      ],
      control: 'pear',
      held: { ...workingPlan.held, days: 2, additions: [{ ingredient: 'ginger root', mass_g: 6, state: 'fresh' }] },
    });
    expect(problems).toEqual([]);
    expect(jars.map(({ additions }) => additions.map(({ ingredient }) => ingredient))).toEqual([
      ['pears', 'ginger root'],
      ['plums', 'ginger root'],
    ]);
  });
  it('no control, one level, the same name twice, two levels alike', () => {
    expect(codes({ control: '5 days' })).toEqual(['no-control at control']);
    expect(codes({ control: '' })).toEqual(['no-control at control']);
    expect(plan({ control: '' }).problems[0]?.message).toContain('No jar is the control yet');
    expect(codes({ levels: [{ name: '2 days', value: 2 }] })).toEqual(['one-level at levels']);
    expect(
      codes({
        levels: [
          { name: '2 days', value: 2 },
          { name: '2 Days', value: 3 },
        ],
      }),
    ).toEqual(['level-name-twice at levels.1.name']);
    expect(
      codes({
        levels: [
          { name: '2 days', value: 2 },
          { name: 'two', value: 2 },
        ],
      }),
    ).toEqual(['levels-alike at levels.1']);
  });
  it('a pull before its start, and days without end', () => {
    expect(
      codes({
        levels: [
          { name: '2 days', value: 2 },
          { name: 'none', value: 0 },
        ],
      }),
    ).toEqual(['pull-before-start at levels.1.value']);
    expect(
      codes({
        levels: [
          { name: '2 days', value: 2 },
          { name: 'back', value: -3 },
        ],
      }),
    ).toEqual(['pull-before-start at levels.1.value']);
    expect(
      codes({
        levels: [
          { name: '2 days', value: 2 },
          { name: 'ages', value: 4000 },
        ],
      }),
    ).toEqual(['too-long at levels.1.value']);
  });
  it('what a level or the held part does not say', () => {
    expect(codes({ levels: [{ name: '2 days', value: 2 }, { name: 'long' }] })).toEqual([
      'level-value-missing at levels.1',
    ]);
    const cover = { factor: 'cover', levels: [{ name: 'cloth' }, { name: 'airlock' }], control: 'cloth' } as const;
    expect(codes(cover)).toEqual(['held-missing at held.days']);
    const empty = { ...workingPlan.held, additions: [], days: 2 };
    const amount = [
      { name: 'a', value: 10 },
      { name: 'b', value: 20 },
    ];
    expect(codes({ factor: 'amount', levels: amount, control: 'a', held: empty })).toEqual([
      'held-missing at held.additions',
    ]);
  });
  it('a temperature at which nothing lives', () => {
    const levels = [
      { name: 'cool', value: 18 },
      { name: 'boiling', value: 100 },
    ];
    const held = { additions: workingPlan.held.additions, days: 2, also: {} };
    expect(codes({ factor: 'temperature', levels, control: 'cool', held })).toEqual([
      'too-warm-or-cold at levels.1.value',
    ]);
  });
});
