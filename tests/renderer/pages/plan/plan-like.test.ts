import { describe, expect, it } from 'vitest';
import { measuresOf } from '#renderer/format/use-measures.ts';
import { judgePlan } from '#renderer/pages/plan/judge-plan.ts';
import { keptPlan, newPlan } from '#renderer/pages/plan/plan-draft.ts';
import { planLike } from '#renderer/pages/plan/plan-like.ts';
import { trial } from '#tests/renderer/small-kitchen.ts';
import { volumeOf } from './typed-plan.ts';

const metric = measuresOf('metric');

describe('planLike(trial)', () => {
  it('asks the same again: levels, control, held and jars come back as they were, the base is asked anew', () => {
    const draft = planLike(trial, metric, '2026-06-01T09:00', 3);
    const { plan, sentences } = judgePlan(
      { ...draft, baseAvailable: '3 L' },
      { bases: [], measures: metric, volumeOf },
    );
    expect(sentences).toEqual([]);
    expect(plan).toMatchObject({
      question: trial.question,
      factor: 'days',
      levels: [
        { name: '2 days', value: 2 },
        { name: '4 days', value: 4 },
      ],
      control: '2 days',
      baseEach_mL: 800,
      held: { additions: trial.held.additions, cover: 'cloth', temperature_C: 22 },
      vessel: trial.vessel,
    });
  });

  it('lets jars that named themselves go on naming themselves, and keeps names of one’s own', () => {
    expect(planLike(trial, metric, '2026-06-01T09:00', 3).levels.map(({ name }) => name)).toEqual(['', '']);
    const named = {
      ...trial,
      levelsWhole: trial.levelsWhole.map((level) => ({ ...level, name: `${level.name} (mine)` })),
    };
    expect(planLike(named, metric, '2026-06-01T09:00', 3).levels[0]?.name).toBe('2 days (mine)');
  });

  it('keeps a handful as it was written, with its weight', () => {
    const additions = [
      { ingredient: 'mint', mass_g: 4, state: 'fresh' as const, asWritten: 'a handful', leftIn: false },
    ];
    const draft = planLike({ ...trial, held: { ...trial.held, additions } }, metric, '2026-06-01T09:00', 3);
    expect(draft.held.additions).toMatchObject([
      { ingredient: 'mint', amount: 'a handful', weight: '4 g', end: 'strained-out' },
    ]);
  });
});

describe('keptPlan(body)', () => {
  it('reads its own drafts, and nothing else', () => {
    const draft = newPlan('metric', '2026-06-01T09:00', 3);
    expect(keptPlan(JSON.parse(JSON.stringify(draft)))).toEqual(draft);
    expect(keptPlan({ ...draft, factor: 'weather' })).toBeNull();
    expect(keptPlan(undefined)).toBeNull();
  });
});
