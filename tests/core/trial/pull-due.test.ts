import { describe, expect, it } from 'vitest';
import { pullDue } from '#core/trial/pull-due.ts';

const planned = { plannedStart: '2026-05-01T08:00:00.000Z', plannedPull: '2026-05-03T08:00:00.000Z' };

describe('pullDue(jar)', () => {
  it('is the plan until the jar is started, and then as long after the start as was planned', () => {
    expect(pullDue({ ...planned, startedAt: null })).toBe(planned.plannedPull);
    expect(pullDue({ ...planned, startedAt: planned.plannedStart })).toBe(planned.plannedPull);
    expect(pullDue({ ...planned, startedAt: '2026-05-02T14:30:00+02:00' })).toBe('2026-05-04T12:30:00.000Z');
    expect(pullDue({ ...planned, startedAt: '2026-05-01T06:00:00.000Z' })).toBe('2026-05-03T06:00:00.000Z');
  });
});
