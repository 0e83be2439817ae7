import { describe, expect, it } from 'vitest';
import { analyseRanking } from '#core/panel/analyse-ranking.ts';
import type { TasterForm } from '#core/panel/panel-analysis.ts';
import { justAboutRight } from '#core/panel/tasters/just-about-right.ts';
import { penaltySentences } from '#core/trial/penalty-sentence.ts';
import { rankingSentence } from '#core/trial/ranking-sentence.ts';
import { tasterSentences } from '#core/trial/taster-sentences.ts';

const forbidden = /\bp\s*[=<]|proved|no difference|NaN|undefined|null/i;

function rankings(orders: readonly string[]) {
  return orders.flatMap((order, taster) =>
    [...order].map((sample, place) => ({ taster: `T${taster}`, sample, rank: place + 1 })),
  );
}

describe('rankingSentence(analysis, tasters)', () => {
  it('says who leads, and of whom they stand clear when the rank sums differ enough', () => {
    const said = rankingSentence(analyseRanking(rankings(Array(8).fill('ABC')), 0.05), 8);
    expect(said).toBe(
      '“A” came first (place 1.0 on average) and “C” last (3.0); by 8 rankings “A” stands clear of “C”.',
    );
  });

  it('says when the rankings are not enough, never that nothing differs', () => {
    const said = rankingSentence(analyseRanking(rankings(['ABC', 'BAC', 'CAB']), 0.05), 3);
    expect(said).toContain('not enough to set them apart');
    expect(said).not.toMatch(forbidden);
    expect(rankingSentence(analyseRanking(rankings(['ABC']), 0.05), 1)).toContain('a second taster');
  });
});

describe('penaltySentences(attribute, penalties)', () => {
  it('says how many, what it cost and how sure', () => {
    const answers = [
      ...Array.from({ length: 6 }, (_, index) => ({ position: 0, liking: 7 + (index % 2) })),
      ...Array.from({ length: 4 }, (_, index) => ({ position: 1, liking: 5 + (index % 2) })),
    ];
    const [said, ...more] = penaltySentences('sweetness', justAboutRight(answers, 0.05));
    expect(said).toMatch(
      /^4 of 10 answers found too much sweetness and liked it 2\.0 points less than those who found it just right \(95 % interval \d\.\d to \d\.\d less\): worth changing\.$/,
    );
    expect(more).toEqual([]);
  });

  it('says when it was right for all, and when nobody found it right', () => {
    expect(penaltySentences('tang', justAboutRight([{ position: 0, liking: 7 }], 0.05))).toEqual([
      'The one answer found the tang just right.',
    ]);
    expect(penaltySentences('tang', justAboutRight([{ position: -1, liking: 7 }], 0.05))[0]).toContain(
      'nobody found it just right',
    );
  });
});

describe('tasterSentences(taster, forms)', () => {
  const form = (attribute: string, change: Partial<TasterForm>): TasterForm => ({
    taster: 'Ann',
    attribute,
    discriminationP: null,
    repeatability: null,
    agreement: 0.9,
    reasons: [],
    ...change,
  });

  it('points a turned scale out gently, and tells what else is known', () => {
    const said = tasterSentences('Ann', [
      form('tang', { agreement: -0.9, reasons: [{ path: [], code: 'scale-turned-round', needs: '' }] }),
      form('fizz', { agreement: 0.1 }),
      form('liking', { discriminationP: 0.01, repeatability: 0.6 }),
    ]);
    expect(said[0]).toContain('perhaps the scale was read the other way round');
    expect(said[1]).toContain('goes their own way on fizz');
    expect(said[2]).toBe('Ann tells the samples apart by liking.');
    expect(said[3]).toContain('within about 0.6 points');
    for (const sentence of said) expect(sentence).not.toMatch(forbidden);
  });

  it('says so when all is well, and when nothing can be told', () => {
    expect(tasterSentences('Ann', [form('tang', {})])).toEqual(['Ann goes with the others.']);
    expect(tasterSentences('Ann', [form('tang', { agreement: null })])[0]).toContain('nothing can be said');
  });
});
