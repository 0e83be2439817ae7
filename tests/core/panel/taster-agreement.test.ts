import { describe, expect, it } from 'vitest';
import { correlationInterval } from '#core/panel/tasters/correlation-interval.ts';
import { tasterAgreement } from '#core/panel/tasters/taster-agreement.ts';
import { agreementSentence } from '#core/trial/agreement-sentence.ts';
import { fc } from '#tests/properties.ts';

const of = (taster: string, scores: readonly (number | null)[]) =>
  scores.flatMap((score, at) => (score === null ? [] : [{ taster, sample: `s${at}`, score }]));

describe('tasterAgreement(scores)', () => {
  it('says how each used the scale, repeats and all', () => {
    const [ann] = tasterAgreement([...of('Ann', [2, 4, 9]), ...of('Ann', [4]), ...of('Ben', [1, 2, 3])]);
    expect(ann).toMatchObject({ taster: 'Ann', scores: 4, lowest: 2, highest: 9, mean: 4.75, shared: 3 });
  });

  it('tells no agreement from two samples, from one taster, or where nothing varies; and no interval from three', () => {
    expect(tasterAgreement([...of('Ann', [2, 4]), ...of('Ben', [1, 2])])[0]?.agreement).toBeNull();
    expect(tasterAgreement(of('Ann', [2, 4, 6]))[0]).toMatchObject({ shared: 0, agreement: null });
    expect(tasterAgreement([...of('Ann', [5, 5, 5]), ...of('Ben', [1, 2, 3])])[0]?.agreement).toBeNull();
    const three = tasterAgreement([...of('Ann', [1, 2, 4]), ...of('Ben', [1, 3, 3])])[0];
    expect(three?.agreement).toBeGreaterThan(0);
    expect(three?.agreementInterval).toBeNull();
    expect(tasterAgreement([])).toEqual([]);
    expect(tasterAgreement(of('Ann', [5]))[0]).toMatchObject({ meanInterval: null, spread: null });
  });

  it('does not move with the order of the scores, with another scale, or with a taster’s own level (property)', () => {
    const panel = fc.array(fc.array(fc.integer({ min: 0, max: 10 }), { minLength: 4, maxLength: 4 }), {
      minLength: 3,
      maxLength: 5,
    });
    fc.assert(
      fc.property(panel, fc.integer({ min: 1, max: 9 }), (rows, shift) => {
        const scores = rows.flatMap((row, taster) => of(`t${taster}`, row));
        const plain = tasterAgreement(scores).map(({ agreement }) => agreement);
        const turned = tasterAgreement(scores.toReversed()).map(({ agreement }) => agreement);
        const moved = tasterAgreement(
          scores.map((one) => ({ ...one, score: 2 * one.score + (one.taster === 't0' ? shift : 0) })),
        ).map(({ agreement }) => agreement);
        plain.forEach((value, at) => {
          for (const other of [turned[at], moved[at]]) {
            if (value === null) expect(other).toBeNull();
            else expect(other).toBeCloseTo(value, 9);
          }
        });
      }),
    );
  });
});

describe('correlationInterval(r, n)', () => {
  it('holds r, lies within −1 and 1, narrows with n, and refuses what is no correlation', () => {
    const [low, high] = correlationInterval(0.8, 8) ?? [0, 0];
    const [lower, higher] = correlationInterval(0.8, 5) ?? [0, 0];
    expect(low).toBeLessThan(0.8);
    expect(high).toBeGreaterThan(0.8);
    expect(lower).toBeLessThan(low);
    expect(higher).toBeGreaterThan(high);
    expect(correlationInterval(1, 6)).toEqual([1, 1]);
    expect(correlationInterval(0.8, 3)).toBeNull();
    expect(() => correlationInterval(1.2, 9)).toThrow(/1\.2/);
  });
});

describe('agreementSentence(attribute, tasters)', () => {
  const one = (taster: string, agreement: number | null, agreementInterval: [number, number] | null = null) => ({
    taster,
    agreement,
    agreementInterval,
  });
  it('names who goes along, who goes their own way and who runs against the others', () => {
    expect(agreementSentence('tang', [one('Ann', 0.9), one('Ben', 0.6)])).toBe('On tang all tasters go together.');
    expect(
      agreementSentence('tang', [one('Ann', 0.9), one('Ben', 0.1), one('Cy', -0.9, [-0.99, -0.4]), one('Di', null)]),
    ).toBe(
      'On tang Ann goes with the others. On tang Ben goes their own way. On tang Cy runs against the others: perhaps the scale was turned round.',
    );
    expect(agreementSentence('tang', [one('Ann', null)])).toContain('can be told');
  });
});
