import { describe, expect, it } from 'vitest';
import type { AttributeAnalysis } from '#core/panel/panel-analysis.ts';
import { detectableDifference } from '#core/panel/serving/panel-power.ts';
import { findingAgainstControl } from '#core/trial/finding-against-control.ts';
import { findingSentence } from '#core/trial/finding-sentence.ts';
import { unseenGap } from '#core/trial/unseen-gap.ts';
import { analysed, forbidden } from './finding-panel.ts';

const days = { '1 day': 1, '2 days': 2, '3 days': 3 };
const frame = { factor: 'days', control: '2 days', replicates: 1 } as const;

function one(attributes: AttributeAnalysis[]): AttributeAnalysis {
  const [first] = attributes;
  if (first === undefined) throw new Error('The invented panel has no attribute.');
  return first;
}

const rising = one(
  analysed({
    tang: {
      middles: { '1 day': 2, '2 days': 4, '3 days': 6 },
      tasters: 6,
      waver: 0.5,
      levels: days,
      control: '2 days',
    },
  }),
);
const falling = one(
  analysed({
    sweetness: {
      middles: { '1 day': 8, '2 days': 6, '3 days': 4 },
      tasters: 6,
      waver: 0.5,
      levels: days,
      control: '2 days',
    },
  }),
);
const flat = one(
  analysed({
    fizz: { middles: { '1 day': 5, '2 days': 5, '3 days': 5 }, tasters: 6, waver: 1, levels: days, control: '2 days' },
  }),
);
const hump = one(
  analysed({
    liking: {
      middles: { '1 day': 4, '2 days': 7.5, '3 days': 4.5 },
      tasters: 8,
      waver: 0.5,
      levels: days,
      control: '2 days',
    },
  }),
);

describe('findingSentence(attribute, frame)', () => {
  it('says direction and size of a slope with its interval, in points a day', () => {
    const said = findingSentence(rising, frame);
    const { slope, slopeLow, slopeHigh } = rising.trend ?? {};
    expect(said).toBe(
      `Tang rises by about ${slope?.toFixed(1)} points a day in these jars (95 % interval ${slopeLow?.toFixed(1)} to ${slopeHigh?.toFixed(1)}).`,
    );
    expect(Number(slope?.toFixed(1))).toBeCloseTo(2, 0);
  });

  it('turns a falling slope round, so that size and interval are both positive and in order', () => {
    const said = findingSentence(falling, frame);
    expect(said).toMatch(
      /^Sweetness falls by about 2\.\d points a day in these jars|^Sweetness falls by about 1\.9 points/,
    );
    const [low, high] = /interval (\d\.\d) to (\d\.\d)/.exec(said)?.slice(1).map(Number) ?? [];
    expect(low).toBeLessThan(high ?? 0);
  });

  it('speaks of highest and lowest where the curve has a top between the levels, and says where the top lies', () => {
    const said = findingSentence(hump, frame);
    expect(said).toMatch(
      /^Liking was highest in “2 days” \(7\.\d\) and lowest in “1 day” \([34]\.\d\) in these jars: 3\.\d points apart/,
    );
    expect(said).toMatch(/The curve is highest near 2\.0 days/);
    expect(said).not.toContain('rises');
  });

  it('says what could have been seen where nothing was, and that is the gap of the power table', () => {
    const said = findingSentence(flat, frame);
    const gap = unseenGap(flat);
    expect(said).toBe(
      `Nothing clear showed in fizz in these jars; with 6 tasters only a gap of about ${gap?.toFixed(1)} points or more would most likely have shown.`,
    );
    const errorSd = Math.sqrt((flat.variances.error ?? 0) + (flat.variances.tasterBySample ?? 0));
    expect(gap).toBeCloseTo(
      detectableDifference({ samples: 3, tasters: 6, replicates: 1, errorSd, alpha: 0.05 }, 0.8),
      9,
    );
  });

  it('calls it a hint where it is clear alone but not among all attributes', () => {
    expect(findingSentence(rising, frame, 0.2)).toMatch(/^A hint at most in tang in these jars/);
  });

  it('speaks of these jars with one jar a level, and of the level where several jars of each agree', () => {
    const levels = { middles: { '1 day': 2, '2 days': 4, '3 days': 6 }, tasters: 6, waver: 0.5, levels: days };
    const several = one(analysed({ tang: { ...levels, jars: 3 } }));
    expect(several.jars?.p).toBeLessThan(0.05);
    expect(findingSentence(several, { ...frame, replicates: 3 })).not.toContain('these jars');
    expect(findingSentence(rising, frame)).toContain('in these jars');
    // Three jars were planned, but the scores don't show how jars of one level differ.
    expect(findingSentence(rising, { ...frame, replicates: 3 })).toContain('in these jars');
  });

  it('says what one taster can’t tell, and what it would take', () => {
    const alone = one(analysed({ tang: { middles: { a: 2, b: 6 }, tasters: 1, waver: 0.5 } }));
    expect(findingSentence(alone, { ...frame, factor: 'fruit' })).toBe(
      'What tang did can’t be told in these jars; it needs a second taster: one alone speaks for nobody else.',
    );
  });
});

describe('findingAgainstControl(attribute, control, isClear)', () => {
  it('gives every level against the control with its interval, and calls an interval over zero luck', () => {
    const said = findingAgainstControl(rising, '2 days', true);
    expect(said).toMatch(
      /^Against “2 days”: “1 day” [12]\.\d points lower \(\d\.\d to \d\.\d\); “3 days” [12]\.\d points higher \(\d\.\d to \d\.\d\)\.$/,
    );
    expect(findingAgainstControl(flat, '2 days', false)).toMatch(
      /which may be luck \(−\d\.\d to \d\.\d\).*hints at most\.$/,
    );
  });

  it('is null without a control', () => {
    expect(findingAgainstControl(rising, null, true)).toBeNull();
  });

  it('says nothing that is forbidden', () => {
    for (const attribute of [rising, falling, flat, hump]) {
      expect(findingAgainstControl(attribute, '2 days', true)).not.toMatch(forbidden);
    }
  });
});
