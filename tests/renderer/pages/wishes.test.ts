import { describe, expect, it } from 'vitest';
import { desirability } from '#core/panel/compare/desirability.ts';
import { slopePoints, type Wish, wishFor, wishPlaces, withWish } from '#renderer/pages/wishes/wish.ts';
import { judgementSentence, rightWords, shareWords } from '#renderer/parts/judgement/judgement-words.ts';
import { errorBasis, neededWords, sightSentence, tooFewWords } from '#renderer/parts/panel-sight/panel-sight-words.ts';

const tang: Wish = { attribute: 'tang', goal: 'target', low: 2, high: 8, target: 5, importance: 2 };
const level = (name: string, winShare: number) => ({ level: name, desirability: 0.62, low: 0.5, high: 0.71, winShare });

describe('wishes', () => {
  it('stand at their attribute; those that no tasting asks for stand at the end', () => {
    const places = wishPlaces({ attributes: [{ name: 'fizz', low: 0, high: 10 }], wishes: [tang] });
    expect(places.map(({ attribute, wish }) => [attribute.name, wish?.goal ?? null])).toEqual([
      ['fizz', null],
      ['tang', 'target'],
    ]);
  });

  it('begin with the whole scale and keep their ends when the goal changes', () => {
    const fresh = wishFor({ name: 'liking', low: 1, high: 9 }, 'more', null);
    expect(fresh).toEqual({ attribute: 'liking', goal: 'more', low: 1, high: 9, target: null, importance: 1 });
    expect(wishFor({ name: 'tang', low: 0, high: 10 }, 'less', tang)).toMatchObject({ low: 2, high: 8, target: null });
    expect(wishFor({ name: 'liking', low: 1, high: 9 }, 'target', fresh).target).toBe(5);
  });

  it('are put in, changed and taken out one by one', () => {
    expect(withWish([], 'tang', tang)).toEqual([tang]);
    expect(withWish([tang], 'tang', { ...tang, low: 1 })).toEqual([{ ...tang, low: 1 }]);
    expect(withWish([tang], 'tang', null)).toEqual([]);
  });

  it('are drawn as they are judged', () => {
    const wishes: Wish[] = [tang, { ...tang, goal: 'more', target: null }, { ...tang, goal: 'less', target: null }];
    for (const wish of wishes) {
      for (const [value, right] of slopePoints(wish, 0, 10)) {
        expect(desirability(value, { ...wish, target: wish.target ?? undefined })).toBeCloseTo(right, 12);
      }
    }
  });
});

describe('the judgement in words', () => {
  it('never claims more than redrawing can tell', () => {
    expect([0, 0.001, 0.5, 0.999, 1].map(shareWords)).toEqual([
      '0 of 100',
      'fewer than 1 of 100',
      '50 of 100',
      'more than 99 of 100',
      '100 of 100',
    ]);
  });

  it('names the closest level with its doubt', () => {
    const judged = { levels: [level('2 days', 0.61), level('3 days', 0.39)], setAfterReveal: false, needs: null };
    expect(judgementSentence({ ...judged, winner: '2 days' })).toBe(
      '“2 days” comes closest to what is wanted. If such a panel were drawn again, it would come out first in only 61 of 100 panels, so the panel has not settled it.',
    );
    expect(judgementSentence({ ...judged, winner: null })).toBeNull();
    expect(rightWords(level('2 days', 0.61))).toBe('62 of 100 (50 to 71)');
    expect(rightWords({ ...level('2 days', 0), desirability: null })).toBe('not scored for every wish');
  });
});

describe('what the panel will see, in words', () => {
  const panel = { samples: 4, tasters: 6, replicates: 1 };

  it('names the gap that shows, or says that none would', () => {
    expect(sightSentence(panel, 1.7)).toBe('With 6 tasters and 4 samples a gap of 1.7 points would most likely show.');
    expect(sightSentence({ ...panel, replicates: 2 }, 1.04)).toBe(
      'With 6 tasters and 4 samples, each served 2 times, a gap of 1.0 point would most likely show.',
    );
    expect(sightSentence({ ...panel, tasters: 2 }, 29)).toContain('no gap would show reliably');
  });

  it('draws nothing for one sample or one taster', () => {
    expect(tooFewWords({ ...panel, samples: 1 })).toContain('at least two');
    expect(tooFewWords({ ...panel, tasters: 1 })).toContain('can’t be told');
    expect(tooFewWords(panel)).toBeNull();
  });

  it('reckons with this kitchen’s own tastings once there are some, and says which', () => {
    expect(errorBasis(undefined)).toMatchObject({ errorSd: 1.8, words: expect.stringContaining('no source') });
    expect(errorBasis({ errorSd: 0.84, tastings: 2, degreesOfFreedom: 30 })).toEqual({
      errorSd: 0.84,
      words: 'Reckoned with single scores that waver by 0.8 points, as in 2 closed tastings of this kitchen.',
    });
  });

  it('says how many tasters a gap takes, and when this panel will do', () => {
    expect(neededWords(19, 6)).toBe('19 tasters.');
    expect(neededWords(5, 6)).toBe('5 tasters: this panel will do.');
    expect(neededWords(null, 6)).toContain('More than 500');
  });
});
