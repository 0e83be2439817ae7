// @vitest-environment happy-dom
import { describe, expect, it, onTestFinished } from 'vitest';
import type { PlannedJar } from '#core/trial/plan-trial.ts';
import { changeWindowWays } from '#renderer/format/window-ways.ts';
import { timeLineOf } from '#renderer/pages/plan/time-line-days.ts';

// Local times without an offset: the line goes by this machine's calendar.
const local = (text: string) => new Date(text).toISOString();
const jar = (label: string, level: string, start: string, pull: string, replicate = 1): PlannedJar => ({
  label,
  level,
  replicate,
  isControl: false,
  start: local(start),
  pull: local(pull),
  base_mL: 1,
  additions: [],
});

describe('timeLineOf(jars)', () => {
  it('spans whole days from the first start to the last pull, and places each jar in it', () => {
    const line = timeLineOf([
      jar('A', 'short', '2026-05-01T12:00', '2026-05-02T12:00'),
      jar('B', 'long', '2026-05-01T12:00', '2026-05-04T12:00'),
    ]);
    expect(line?.days.map(({ date }) => date)).toEqual(['1 May', '2 May', '3 May', '4 May']);
    expect(line?.rows.map(({ from, to }) => [from, to])).toEqual([
      [0.125, 0.375],
      [0.125, 0.875],
    ]);
    expect(line?.isStaggered).toBe(true);
  });

  it('gives jars of one level one row', () => {
    const line = timeLineOf([
      jar('A1', 'short', '2026-05-01T00:00', '2026-05-02T00:00', 1),
      jar('A2', 'short', '2026-05-01T00:00', '2026-05-02T00:00', 2),
    ]);
    expect(line?.rows.map(({ label }) => label)).toEqual(['A1–A2']);
    expect(line?.days).toHaveLength(1);
    expect(line?.isStaggered).toBe(false);
  });

  it('draws nothing of days that run backwards, that are not there, or that last for years', () => {
    expect(timeLineOf([])).toBeNull();
    expect(timeLineOf([jar('A', 'a', '2026-05-02T00:00', '2026-05-01T00:00')])).toBeNull();
    expect(timeLineOf([jar('A', 'a', '2026-05-02T00:00', '2029-05-01T00:00')])).toBeNull();
  });

  it('marks the days on which a week begins, as this window has it', () => {
    onTestFinished(() => changeWindowWays({ firstDay: 'system' }));
    // 1 May 2026 is a Friday.
    const days = () =>
      timeLineOf([jar('A', 'long', '2026-05-01T12:00', '2026-05-12T12:00')])
        ?.days.filter(({ startsWeek }) => startsWeek)
        .map(({ name, day }) => `${name} ${day}`);
    changeWindowWays({ firstDay: 'monday' });
    expect(days()).toEqual(['Mon 4', 'Mon 11']);
    changeWindowWays({ firstDay: 'sunday' });
    expect(days()).toEqual(['Sun 3', 'Sun 10']);
  });
});
