import { describe, expect, it } from 'vitest';
import { jarDay } from '#renderer/parts/shelf/trial-shelf-jars.tsx';
import { trial } from '#tests/renderer/small-kitchen.ts';

const [first] = trial.jarsWhole;
if (first === undefined) throw new Error('the small kitchen has no jar');
const started = {
  ...first,
  state: 'fermenting' as const,
  startedAt: '2026-05-01T09:00:00Z',
  pulledAt: null,
  plannedPull: '2026-05-05T09:00:00Z',
};
const at = (moment: string) => Date.parse(moment);

describe('jarDay(jar, days, now)', () => {
  it('counts whole days and the share of the planned ones', () => {
    expect(jarDay(started, 4, at('2026-05-04T09:00:00Z'))).toEqual({ day: 3, share: 0.75, isLate: false });
    expect(jarDay(started, 4, at('2026-05-01T10:00:00Z'))?.day).toBe(0);
  });

  it('is late after the planned pull, and only while the jar still stands', () => {
    expect(jarDay(started, 4, at('2026-05-06T09:00:00Z'))).toEqual({ day: 5, share: 1, isLate: true });
    const pulled = { ...started, state: 'pulled' as const, pulledAt: '2026-05-03T09:00:00Z' };
    expect(jarDay(pulled, 4, at('2026-05-09T09:00:00Z'))).toEqual({ day: 2, share: 0.5, isLate: false });
  });

  it('is nothing for a jar that was not started or is thrown away', () => {
    expect(jarDay({ ...started, state: 'planned', startedAt: null }, 4, at('2026-05-06T09:00:00Z'))).toBeUndefined();
    expect(jarDay({ ...started, state: 'discarded' }, 4, at('2026-05-06T09:00:00Z'))).toBeUndefined();
  });
});
