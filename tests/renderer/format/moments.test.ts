import { describe, expect, it } from 'vitest';
import { dayOfJar, spanWords } from '#renderer/format/moments.ts';
import { typedNumber } from '#renderer/format/number-field.ts';

describe('spanWords(hours)', () => {
  it('uses the largest unit that still says something', () => {
    expect([0.5, 1, 47.4, 50, 24 * 9].map(spanWords)).toEqual(['30 minutes', '1 hour', '47 hours', '2 days', '9 days']);
  });
});

describe('dayOfJar(startedAt, now)', () => {
  it('counts the first 24 hours as day 0 and never goes below', () => {
    const at = (moment: string) => dayOfJar('2026-05-01T09:00:00Z', Date.parse(moment));
    expect([at('2026-05-02T08:59:00Z'), at('2026-05-02T09:00:00Z'), at('2026-04-30T09:00:00Z')]).toEqual([0, 1, 0]);
  });
});

describe('typedNumber(text)', () => {
  it('reads a whole field the way people write numbers, and nothing else', () => {
    expect(typedNumber(' 1,5 ')).toEqual({ kind: 'number', value: 1.5 });
    expect(typedNumber('')).toEqual({ kind: 'none' });
    expect(typedNumber('850 mL')).toEqual({ kind: 'other' });
    expect(typedNumber('a lot')).toEqual({ kind: 'other' });
  });
});
