import { describe, expect, it } from 'vitest';
import { chanceCorrect } from '#core/panel/apart/thurstone.ts';
import { dPrimeWords } from '#renderer/pages/telling-apart/d-prime-words.ts';
import { designWords, timesInTen } from '#renderer/pages/telling-apart/design-words.ts';
import { stripAnchor, stripPlace, stripWords } from '#renderer/pages/telling-apart/guess-strip-words.ts';
import { pouredTrays } from '#renderer/pages/telling-apart/poured-trays.ts';
import { buildInput, methodOf, type SetUp, servableJars, usualPair } from '#renderer/pages/telling-apart/set-up.ts';
import { fewTastersWords, missingWords } from '#renderer/pages/telling-apart/words.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { idOf, jarOf, trial } from '../small-kitchen.ts';

type Design = ValueOf<'panel:discriminationDesign'>;
type Result = NonNullable<ValueOf<'discriminations:open'>['result']>;

const design: Design = {
  minimumCorrect: 8,
  expectedByGuessing: 4,
  fewestTrials: 3,
  chances: [
    { dPrime: 1, right: 0.418, power: 0.09 },
    { dPrime: 1.5, right: 0.506, power: 0.21 },
    { dPrime: 2, right: 0.605, power: 0.46 },
  ],
  trialsNeeded: 57,
  reasons: [],
};

const result: Result = {
  correct: 9,
  trials: 12,
  tasters: 12,
  expectedByGuessing: 4,
  p: 0.0038,
  minimumCorrect: 8,
  significant: true,
  dPrime: 2.7,
  dPrimeLow: 1.3,
  dPrimeHigh: 4.5,
  sentence: '',
};

describe('designWords(design, method, answers)', () => {
  it('says how many right answers would be more than luck, what would be found, and what it takes', () => {
    expect(designWords(design, 'triangle', 12)).toEqual([
      'Of 12 answers, 8 right would be more than luck; guessing alone gives about 4.',
      'A clear difference, if there is one, would be found 2 times in 10.',
      'To find a clear difference 8 times in 10 it takes 57 answers.',
    ]);
  });

  it('says that too few can show nothing, even all right', () => {
    const few = { ...design, minimumCorrect: null, expectedByGuessing: 1, fewestTrials: 6, trialsNeeded: 15 };
    expect(designWords(few, 'paired-two-sided', 2)[0]).toBe(
      '2 answers can’t show a difference: even if all are right, that could be luck. At least 6 are needed.',
    );
  });

  it('speaks of the same jar where none is expected, and of all where every answer is needed', () => {
    const all = { ...design, minimumCorrect: 6, expectedByGuessing: 3 };
    expect(designWords(all, 'paired-two-sided', 6)[0]).toBe(
      'Of 6 answers, all 6 for the same jar would be more than luck; guessing alone gives about 3 each.',
    );
  });

  it('never says always or never', () => {
    expect([0, 0.04, 0.05, 0.5, 0.94, 0.96, 1].map(timesInTen)).toEqual([
      'hardly ever',
      'hardly ever',
      '1 time in 10',
      '5 times in 10',
      '9 times in 10',
      'nearly every time',
      'nearly every time',
    ]);
  });
});

describe('dPrimeWords(result, method)', () => {
  it('gives the figure, its interval and what it means; the rates in its words are those of the model', () => {
    for (const method of ['triangle', 'duo-trio', 'paired', 'paired-two-sided'] as const) {
      const { best, interval, explanation } = dPrimeWords(result, method);
      expect([best, interval]).toEqual(['2.7', '1.3 to 4.5']);
      const [at1, at2] = [1, 2].map((dPrime) => Math.round(chanceCorrect(method, dPrime) * 100));
      expect(explanation[0]).toContain(`right ${at1} times in 100 where it is 1, and ${at2} times where it is 2`);
    }
  });

  it('says in words what has no end: every answer right', () => {
    const perfect = { ...result, correct: 12, dPrime: null, dPrimeHigh: null, dPrimeLow: 2.9 };
    const { best, interval, explanation } = dPrimeWords(perfect, 'triangle');
    expect([best, interval]).toEqual(['too large to tell', '2.9 or more']);
    expect(explanation.join(' ')).toContain('no upper end');
  });

  it('warns that answers of one person hang together', () => {
    expect(dPrimeWords({ ...result, tasters: 4 }, 'triangle').explanation.at(-1)).toContain('the same person');
  });
});

describe('the strip of luck', () => {
  it('says all its marks in one sentence', () => {
    expect(stripWords(result, 'triangle').whole).toBe('Of 12: 9 right; by luck: about 4; more than luck: 8 or more.');
    expect(stripWords({ ...result, minimumCorrect: null }, 'paired').beyond).toBe(
      'more than luck: not to be had with 12',
    );
    expect(stripWords({ ...result, minimumCorrect: 12 }, 'paired-two-sided').beyond).toBe('more than luck: all 12');
  });

  it('keeps every count and its words inside', () => {
    for (let count = 0; count <= 12; count += 1) {
      const place = stripPlace(count, 12);
      expect(place).toBeGreaterThanOrEqual(3);
      expect(place).toBeLessThanOrEqual(97);
    }
    expect([stripAnchor(3), stripAnchor(50), stripAnchor(97)]).toEqual(['start', 'middle', 'end']);
  });
});

describe('setting a test up', () => {
  const setUp: SetUp = {
    way: 'triangle',
    jarA: idOf(1),
    jarB: idOf(2),
    asked: 'sweeter',
    expected: 'B',
    tasters: [idOf(3)],
    rounds: 2,
    name: 'T',
  };

  it('serves only jars that were started and stand, the control first and another level beside it', () => {
    const jars = [
      jarOf('C', 2, { state: 'planned' }),
      jarOf('D', 2, { state: 'discarded' }),
      jarOf('E', 2),
      jarOf('A', 1),
    ];
    const servable = servableJars({ ...trial, jarsWhole: jars });
    expect(servable.map(({ label }) => label)).toEqual(['E', 'A']);
    expect(usualPair(servable)).toEqual({ jarA: jarOf('A', 1).id, jarB: jarOf('E', 2).id });
    expect(usualPair([])).toEqual({ jarA: '', jarB: '' });
  });

  it('asks and expects only in a pair; a pair without an expectation is two-sided', () => {
    expect(buildInput(idOf(9), setUp, 7)).not.toHaveProperty('expected');
    expect(buildInput(idOf(9), setUp, 7)).not.toHaveProperty('asked');
    const pair: SetUp = { ...setUp, way: 'paired' };
    expect(buildInput(idOf(9), pair, 7)).toMatchObject({ method: 'paired', expected: 'B', asked: 'sweeter', seed: 7 });
    expect(methodOf({ ...pair, expected: null })).toBe('paired-two-sided');
    expect(buildInput(idOf(9), { ...pair, expected: null }, 7)).not.toHaveProperty('expected');
  });
});

describe('words around a test', () => {
  it('says what one and two people can’t tell, and nothing of the kind for three', () => {
    expect(fewTastersWords(1)).toContain('stays open');
    expect(fewTastersWords(2)).toContain('the two of them');
    expect(fewTastersWords(3)).toBeNull();
  });

  it('counts what is missing before it is left out', () => {
    expect(missingWords(5, 6)).toBe('5 of 6 answers in; 1 is missing and will be left out.');
    expect(missingWords(6, 6)).toBe('All 6 answers are in.');
  });

  it('pouredTrays reads a duo-trio’s reference apart from its cups', () => {
    const list = [{ tasterName: 'Ana', round: 1, cups: 'B:AB', codes: ['274', '859'] }];
    expect(pouredTrays({ jarA: 'A1', jarB: 'C2', list })).toEqual([
      { key: '0', title: 'Ana', reference: 'jar C2', cups: ['274: jar A1', '859: jar C2'] },
    ]);
  });
});
