import { describe, expect, it } from 'vitest';
import { sipsByDay } from '#renderer/pages/taste/sips-by-day.ts';
import { readSip, sipWords } from '#renderer/parts/sip-entry/read-sip.ts';

describe('readSip', () => {
  it('takes four digits in a row as tang, fizz, sweetness and liking', () => {
    expect(readSip('5637')).toEqual({ kind: 'sip', scores: { tang: 5, fizz: 6, sweetness: 3, liking: 7 } });
    expect(readSip(' 0019 ')).toEqual({ kind: 'sip', scores: { tang: 0, fizz: 0, sweetness: 1, liking: 9 } });
  });

  it('takes numbers with spaces, so that one may be 10 or have a half, and a dash that leaves one out', () => {
    expect(readSip('10 6 3 7')).toEqual({ kind: 'sip', scores: { tang: 10, fizz: 6, sweetness: 3, liking: 7 } });
    expect(readSip('5 6,5 - 7.5')).toEqual({ kind: 'sip', scores: { tang: 5, fizz: 6.5, liking: 7.5 } });
    expect(readSip('5-37')).toEqual({ kind: 'sip', scores: { tang: 5, sweetness: 3, liking: 7 } });
  });

  it('says what is still to come, and what is too much', () => {
    expect(readSip('')).toEqual({ kind: 'none' });
    expect(readSip('56')).toEqual({ kind: 'fault', message: 'Still to come: sweetness, liking.' });
    expect(readSip('10637')).toMatchObject({ kind: 'fault', message: expect.stringContaining('spaces') });
    expect(readSip('1 2 3 4 5')).toMatchObject({ kind: 'fault', message: expect.stringContaining('here are 5') });
  });

  it('refuses what is off its scale, not a number, or nothing at all', () => {
    expect(readSip('5630')).toEqual({ kind: 'fault', message: 'liking goes from 1 to 9; 0 is outside.' });
    expect(readSip('11 6 3 7')).toEqual({ kind: 'fault', message: 'tang goes from 0 to 10; 11 is outside.' });
    expect(readSip('5a37')).toEqual({ kind: 'fault', message: '“a” is not a number.' });
    expect(readSip('----')).toMatchObject({ kind: 'fault' });
  });
});

describe('sipWords', () => {
  it('shows a sip back in words, with the word of the nine-point scale', () => {
    expect(sipWords({ tang: 5, fizz: 6, sweetness: 3, liking: 7 })).toBe(
      'tang 5, fizz 6, sweetness 3, liking 7 (like moderately)',
    );
    expect(sipWords({ tang: null, fizz: null, sweetness: 2.5, liking: null })).toBe('sweetness 2.5');
  });
});

describe('sipsByDay', () => {
  it('lists the newest day first, and a day’s sips by jar and time', () => {
    const sip = (label: string, takenAt: string) => ({ label, takenAt });
    const days = sipsByDay([
      sip('B', '2026-05-02T12:00:00Z'),
      sip('A', '2026-05-02T13:00:00Z'),
      sip('A', '2026-05-04T12:00:00Z'),
      sip('A', '2026-05-02T11:00:00Z'),
    ]);
    expect(days.map(({ sips }) => sips.map(({ label, takenAt }) => `${label} ${takenAt.slice(8, 13)}`))).toEqual([
      ['A 04T12'],
      ['A 02T11', 'A 02T13', 'B 02T12'],
    ]);
  });
});
