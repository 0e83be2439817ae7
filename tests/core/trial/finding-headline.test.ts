import { describe, expect, it } from 'vitest';
import { analysePanel } from '#core/panel/analyse.ts';
import { shrunkenWinner } from '#core/panel/compare/shrunken-winner.ts';
import { factors } from '#core/trial/factor.ts';
import { findingAgainstControl } from '#core/trial/finding-against-control.ts';
import { findingHeadline } from '#core/trial/finding-headline.ts';
import { findingSentence } from '#core/trial/finding-sentence.ts';
import { adjustedChances, surenessOf, surenessSentence } from '#core/trial/finding-sureness.ts';
import { fc } from '#tests/properties.ts';
import { analysed, forbidden } from './finding-panel.ts';

const days = { '1 day': 1, '2 days': 2, '3 days': 3 };
const scales = { liking: [1, 9] as const };
const frame = { factor: 'days', control: '2 days', replicates: 1, scales } as const;
const clear = {
  middles: { '1 day': 4, '2 days': 5, '3 days': 8 },
  tasters: 8,
  waver: 0.5,
  levels: days,
  control: '2 days',
};
const same = { ...clear, middles: { '1 day': 5, '2 days': 5, '3 days': 5 }, waver: 1 };

describe('findingHeadline(attributes, liking, frame)', () => {
  it('names the best level, its score on its scale, its lead over the control, and the interval of that lead', () => {
    const attributes = analysed({ liking: clear });
    const headline = findingHeadline(attributes, 'liking', frame);
    const best = attributes[0]?.means.find(({ sample }) => sample === '3 days')?.mean ?? 0;
    const lead = attributes[0]?.versusControl?.find(({ sample }) => sample === '3 days');
    expect(headline?.sentence).toBe(
      `“3 days” was liked best: ${best.toFixed(1)} on the scale from 1 to 9, ${lead?.difference.toFixed(1)} points above “2 days”, the control (95 % interval ${lead?.low.toFixed(1)} to ${lead?.high.toFixed(1)}).`,
    );
    expect(headline?.sureness).toMatch(/^Very sure: .* fewer than 1 in 1,000 such tastings\.$/);
    expect(headline?.doubts.at(-1)).toMatch(
      /^One jar for each level: this speaks of these jars\. To speak of days in general/,
    );
    expect(headline?.winner?.level).toBe('3 days');
  });

  it('holds a control that leads against the next best', () => {
    const attributes = analysed({ liking: { ...clear, middles: { '1 day': 4, '2 days': 8, '3 days': 5 } } });
    expect(findingHeadline(attributes, 'liking', frame)?.sentence).toMatch(
      /^“2 days”, the control, was liked best: \d\.\d on the scale from 1 to 9, \d\.\d points above the next, “3 days” \(95 % interval \d\.\d to \d\.\d\)\.$/,
    );
  });

  it('expects of the winner what shrinking gives, and says so small', () => {
    const attributes = analysed({ liking: { ...clear, waver: 1.5 } });
    const [liking] = attributes;
    const headline = findingHeadline(attributes, 'liking', frame);
    const means = (liking?.means ?? []).flatMap(({ mean }) => (mean === null ? [] : [mean]));
    const { expected } = shrunkenWinner(means, liking?.test?.f ?? 0);
    expect(headline?.winner?.expected).toBeCloseTo(expected, 9);
    expect(headline?.winner?.expected).toBeLessThan(headline?.winner?.mean ?? 0);
    expect(headline?.small.join(' ')).toContain('partly the luckiest');
  });

  it('names no winner where liking is not clear, and says what could have been seen and what did show', () => {
    const attributes = analysed({
      liking: same,
      tang: { ...clear, middles: { '1 day': 2, '2 days': 4, '3 days': 6 } },
    });
    const headline = findingHeadline(attributes, 'liking', frame);
    expect(headline?.winner).toBeNull();
    expect(headline?.sureness).toBeNull();
    expect(headline?.sentence).toMatch(/^No jar was clearly liked best\. .*that may be luck\.$/);
    expect(headline?.also).toMatch(/^Tang rises by about/);
    expect(headline?.doubts[0]).toMatch(
      /^Eight tasters could most likely only have shown a gap in liking of about \d\.\d points? or more\.$/,
    );
  });

  it('allows for the number of attributes: what is clear alone is not among many', () => {
    const nearly = { ...same, middles: { '1 day': 5, '2 days': 5, '3 days': 6 }, waver: 1.25 };
    const alone = analysed({ liking: nearly });
    const p = alone[0]?.test?.p ?? 1;
    expect(p).toBeGreaterThan(0.05 / 8);
    expect(p).toBeLessThan(0.05);
    expect(findingHeadline(alone, 'liking', frame)?.winner?.level).toBe('3 days');
    const others = Object.fromEntries(['a', 'b', 'c', 'd', 'e', 'f', 'g'].map((name) => [name, same]));
    const many = analysed({ liking: nearly, ...others });
    const headline = findingHeadline(many, 'liking', frame);
    expect(headline?.winner).toBeNull();
    expect(headline?.doubts.join(' ')).toContain('Taken alone, liking would stand clear');
  });

  it('says which rivals the winner is not clear of', () => {
    const close = analysed({ liking: { ...clear, middles: { '1 day': 3, '2 days': 7.6, '3 days': 8 }, waver: 1 } });
    const headline = findingHeadline(close, 'liking', frame);
    const winner = headline?.winner?.level;
    const rival = winner === '3 days' ? '2 days' : '3 days';
    expect(headline?.doubts.join(' ')).toMatch(
      new RegExp(
        `Its lead may still be luck against “${rival}” \\(\\d\\.\\d points?, 95 % interval −\\d\\.\\d to \\d\\.\\d\\)\\.`,
      ),
    );
  });

  it('says what one taster and what two tasters can and can’t tell', () => {
    const one = findingHeadline(analysed({ liking: { ...clear, tasters: 1 } }), 'liking', frame);
    expect(one?.sentence).toMatch(/^“3 days” was liked best by the one taster: /);
    expect(one?.sureness).toBeNull();
    expect(one?.winner).toBeNull();
    expect(one?.doubts[0]).toMatch(/^One taster tells what one person found\./);
    const two = findingHeadline(analysed({ liking: { ...clear, tasters: 2 } }), 'liking', frame);
    expect(two?.doubts[0]).toMatch(/^Only two tasters: only large gaps can show/);
  });

  it('says that nobody scored liking, and answers with what is clearest', () => {
    const headline = findingHeadline(analysed({ tang: clear }), null, frame);
    expect(headline?.sentence).toMatch(/^Nobody scored the liking of two levels/);
    expect(headline?.also).toMatch(/^Tang rises/);
    expect(headline?.sureness).toMatch(/had all been alike/);
  });

  it('is null where nothing was scored', () => {
    expect(findingHeadline([], null, frame)).toBeNull();
  });

  it('never says a bare p, never calls anything certain, never says that nothing differs, over random panels', () => {
    const score = fc.option(fc.integer({ min: 1, max: 9 }), { nil: null, freq: 8 });
    const panel = fc.record({
      samples: fc.integer({ min: 1, max: 4 }),
      tasters: fc.integer({ min: 1, max: 5 }),
      factor: fc.constantFrom(...factors),
      replicates: fc.integer({ min: 1, max: 2 }),
      hasControl: fc.boolean(),
      hasLiking: fc.boolean(),
      scores: fc.array(score, { minLength: 60, maxLength: 60 }),
    });
    fc.assert(
      fc.property(panel, ({ samples, tasters, factor, replicates, hasControl, hasLiking, scores }) => {
        let next = 0;
        const given = ['tang', 'fizz', hasLiking ? 'liking' : 'fruit'].flatMap((attribute) =>
          Array.from({ length: samples }, (_, s) =>
            Array.from({ length: tasters }, (_unused, t) => {
              const value = scores[next % scores.length] ?? null;
              next += 1;
              return value === null
                ? []
                : [{ taster: `T${t}`, sample: `L${s}`, attribute, score: value, jar: `L${s}${t % replicates}` }];
            }).flat(),
          ).flat(),
        );
        fc.pre(given.length > 0);
        const levels = Object.fromEntries(Array.from({ length: samples }, (_, s) => [`L${s}`, s + 1]));
        const control = hasControl ? 'L0' : null;
        const { attributes } = analysePanel({ scores: given, levels, ...(control === null ? {} : { control }) });
        const whole = { factor, control, replicates, scales };
        const liking = attributes.some(({ attribute }) => attribute === 'liking') ? 'liking' : null;
        const headline = findingHeadline(attributes, liking, whole);
        const chances = adjustedChances(attributes);
        const said = [
          headline?.sentence,
          headline?.also,
          headline?.sureness,
          ...(headline?.doubts ?? []),
          ...(headline?.small ?? []),
          ...attributes.map((one) => findingSentence(one, whole, chances.get(one.attribute) ?? null)),
          ...attributes.map((one) => findingAgainstControl(one, control, false)),
        ].filter((words) => typeof words === 'string');
        expect(said.length).toBeGreaterThan(0);
        for (const words of said) {
          expect(words).not.toMatch(forbidden);
          expect(words).toMatch(/^[\p{Lu}“\d].*\.\)?$/u);
        }
        if (headline?.winner) expect(headline.sureness).not.toBeNull();
      }),
      { numRuns: 120, seed: 11 },
    );
  }, 60_000);
});

describe('surenessOf(chance) and surenessSentence', () => {
  it('steps at 1 in 1,000, in 100 and in 20', () => {
    expect([0.0009, 0.001, 0.0099, 0.01, 0.049, 0.05, null].map(surenessOf)).toEqual([
      'very',
      'quite',
      'quite',
      'fairly',
      'fairly',
      'unclear',
      'unknown',
    ]);
  });

  it('says what it means as a count of tastings, and nothing where it is not clear', () => {
    expect(surenessSentence(0.02, 1, 'liked alike')).toBe(
      'Fairly sure: had all been liked alike, luck alone would set them this far apart in fewer than 1 in 20 such tastings.',
    );
    expect(surenessSentence(0.2, 3, 'liked alike')).toBeNull();
  });
});
