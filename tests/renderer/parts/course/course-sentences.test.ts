import { describe, expect, it } from 'vitest';
import { measuresOf } from '#renderer/format/use-measures.ts';
import {
  courseSentence,
  equivalentWords,
  fittedSentence,
  stoodWords,
  sweetWords,
} from '#renderer/parts/course/course-sentences.ts';
import { courseOf } from '#tests/renderer/small-course.ts';

const metric = measuresOf('metric');
const few = { path: ['readings'], code: 'too-few-readings', needs: 'At least 4.' } as const;

describe('sweetWords(course, wanted)', () => {
  it('says the hour with its interval', () => {
    expect(sweetWords(courseOf('A', { sweetEnough: { hours: 33.96, low: 31.2, high: 37.8 } }), 3)).toBe(
      '3 °Bx after about 34 h (95 %: 31 h to 38 h).',
    );
  });
  it('says which end the readings leave open', () => {
    const open = (low: number | null, high: number | null) =>
      sweetWords(courseOf('A', { sweetEnough: { hours: 40, low, high } }), 3);
    expect(open(30, null)).toContain('at the earliest 30 h; the readings leave the late end open');
    expect(open(null, 50)).toContain('at the latest 50 h; the readings leave the early end open');
    expect(open(null, null)).toContain('both ends open');
  });
  it('says how many readings are missing instead of a time', () => {
    const short = courseOf('A', { brix: [{ hours: 0, value: 6 }], fall: null, reasons: [few, few] });
    expect(sweetWords(short, 3)).toBe(
      'Not enough readings: 1 sugar reading, at least 4 at different hours are needed.',
    );
    const target = { path: ['hours'], code: 'target-not-reached', needs: '' } as const;
    expect(sweetWords(courseOf('A', { reasons: [target] }), 30)).toMatch(/Not between what it had/);
  });
});

describe('stoodWords(course)', () => {
  it('says the hours stood and their range at 22 °C', () => {
    expect(stoodWords(courseOf('A'), measuresOf('metric'))).toBe(
      'Stood 48 h; that did as much as 44 h to 46 h at 22 °C.',
    );
    expect(equivalentWords({ low: 44.1, high: 44.3 })).toBe('about 44 h');
    expect(stoodWords(courseOf('A', { stood: null }), measuresOf('metric'))).toBeNull();
  });
});

describe('courseSentence(jars, measure, measures)', () => {
  it('says the first and last reading of one jar, and the span of several', () => {
    expect(courseSentence([courseOf('A')], 'sugar', metric)).toBe('6.0 °Bx at 0 h, 3.5 °Bx at 48 h.');
    const other = courseOf('B', { brix: [{ hours: 48, value: 2 }] });
    expect(courseSentence([courseOf('A'), other], 'sugar', metric)).toBe(
      'At their last readings the jars lie between 2.0 °Bx and 3.5 °Bx.',
    );
    expect(courseSentence([courseOf('A', { ph: [] })], 'ph', metric)).toBeNull();
    expect(courseSentence([courseOf('A'), courseOf('B')], 'temperature', metric)).toBe(
      'At their last readings all jars stand at 22 °C.',
    );
  });
});

describe('fittedSentence(jars)', () => {
  it('names the jars that still want readings', () => {
    const short = courseOf('B', { fall: null, reasons: [few] });
    expect(fittedSentence([courseOf('A'), short])).toBe('Fitted, with 95 % bands: A. Too few readings (under 4): B.');
    expect(fittedSentence([short])).toBe('From 4 readings on, the fall is fitted.');
  });
});
