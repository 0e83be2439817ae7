import { describe, expect, it } from 'vitest';
import { units } from '#core/units/unit-table.ts';
import { chanceOfOneOrder, fewestTasters, rankingSightWords } from '#renderer/pages/taste/ranking-sight-words.ts';
import { firstDraft, keptDraft, ownAttribute, readDraft, stillThere } from '#renderer/pages/taste/tasting-draft.ts';
import { allRequests } from '#shared/contract/all-requests.ts';
import { idOf } from '#tests/renderer/small-kitchen.ts';

const metric = { volume: units.mL, temperature: units.celsius };
const whole = { ...firstDraft('Tasting', [idOf(1), idOf(2)]), tasters: [idOf(3)] };

describe('readDraft', () => {
  it('asks for the six usual attributes, and what the desk would take', () => {
    const { input, faults } = readDraft({ ...whole, amount: '30', temperature: '6,5' }, idOf(9), metric, 4);
    expect(faults).toEqual({});
    expect(input).toMatchObject({ served_C: 6.5, samples: [{ served_mL: 30 }, { served_mL: 30 }], seed: 4 });
    expect(input?.attributes?.map(({ name }) => name)).toEqual([
      'tang',
      'fizz',
      'sweetness',
      'fruit',
      'vinegar note',
      'liking',
    ]);
    expect(allRequests['tastings:build'].input.safeParse(input).success).toBe(true);
  });

  it('reads ounces and degrees Fahrenheit where the kitchen has them, or where they are written', () => {
    const us = { volume: units.flOz, temperature: units.fahrenheit };
    const { input } = readDraft({ ...whole, amount: '1', temperature: '41' }, idOf(9), us, 4);
    expect(input?.samples[0]?.served_mL).toBeCloseTo(29.5735, 4);
    expect(input?.served_C).toBeCloseTo(5, 10);
    expect(readDraft({ ...whole, amount: '30 mL' }, idOf(9), us, 4).input?.samples[0]?.served_mL).toBe(30);
  });

  it('names each field that can’t be taken', () => {
    const { input, faults } = readDraft(
      { ...whole, name: ' ', jars: [], tasters: [], amount: 'some', temperature: '90' },
      idOf(9),
      metric,
      4,
    );
    expect(input).toBeNull();
    expect(Object.keys(faults).sort()).toEqual(['amount', 'jars', 'name', 'tasters', 'temperature']);
  });

  it('takes an own attribute with its ends and words, and refuses one without a name, a twin, or turned ends', () => {
    const own = { ...ownAttribute(whole.attributes), name: 'funk', lowWord: 'clean', highWord: 'barnyard' };
    const withOwn = (part: object) => ({ ...whole, attributes: [...whole.attributes, { ...own, ...part }] });
    expect(readDraft(withOwn({}), idOf(9), metric, 4).input?.attributes?.at(-1)).toEqual({
      name: 'funk',
      low: 0,
      high: 10,
      lowWord: 'clean',
      highWord: 'barnyard',
    });
    expect(readDraft(withOwn({ name: '' }), idOf(9), metric, 4).faults).toHaveProperty('attribute own 1 name');
    expect(readDraft(withOwn({ name: 'Tang' }), idOf(9), metric, 4).faults).toHaveProperty('attribute own 1 name');
    expect(readDraft(withOwn({ low: '10', high: '0' }), idOf(9), metric, 4).faults).toHaveProperty(
      'attribute own 1 ends',
    );
    const none = { ...whole, attributes: whole.attributes.map((one) => ({ ...one, isIn: false })) };
    expect(readDraft(none, idOf(9), metric, 4).faults).toHaveProperty('attributes');
  });
});

describe('readDraft of another kind', () => {
  const metricOf = (draft: typeof whole) => readDraft(draft, idOf(9), metric, 4);

  it('asks for a just-about-right answer in five steps with the words at its ends, whatever stood in the ends', () => {
    const attributes = whole.attributes.map((one) =>
      one.name === 'sweetness' ? { ...one, kind: 'just-about-right' as const, low: 'x' } : one,
    );
    const { input, faults } = metricOf({ ...whole, attributes });
    expect(faults).toEqual({});
    expect(input?.attributes?.find(({ name }) => name === 'sweetness')).toEqual({
      name: 'sweetness',
      kind: 'just-about-right',
      low: -2,
      high: 2,
      lowWord: 'much too little',
      highWord: 'much too much',
    });
    expect(allRequests['tastings:build'].input.safeParse(input).success).toBe(true);
  });

  it('asks a ranking for nothing but the order, and refuses one of a single jar', () => {
    const { input } = metricOf({ ...whole, way: 'ranked', replicates: 3 });
    expect(input).toMatchObject({ ranked: true });
    expect(input).not.toHaveProperty('attributes');
    expect(input).not.toHaveProperty('replicates');
    expect(metricOf({ ...whole, way: 'ranked', jars: [idOf(1)] }).faults).toHaveProperty('jars');
  });
});

describe('a kept draft', () => {
  it('is taken up as it was, without jars and people who are gone; anything else is none', () => {
    const draft = { ...whole, attributes: [...whole.attributes, ownAttribute(whole.attributes)] };
    const kept = keptDraft(JSON.parse(JSON.stringify(draft)));
    expect(kept).toEqual(draft);
    expect(stillThere(draft, [idOf(2)], [])).toMatchObject({ jars: [idOf(2)], tasters: [] });
    for (const other of [undefined, null, {}, { ...draft, way: 'guessed' }, { ...draft, more: 1 }]) {
      expect(keptDraft(other)).toBeNull();
    }
  });

  it('gives each own attribute a key that none has', () => {
    const one = ownAttribute(whole.attributes);
    const two = ownAttribute([...whole.attributes, one]);
    expect(new Set([...whole.attributes, one, two].map(({ key }) => key)).size).toBe(8);
  });
});

describe('what a ranking can tell', () => {
  // Friedman, The use of ranks to avoid the assumption of normality, J. Am. Stat. Assoc. 32 (1937) 675, tables V and VI (from memory):
  // the largest chi-square has probability 0.028 for three samples and three tasters, 0.0046 for four tasters, 0.042 for four and two.
  it('chanceOfOneOrder is the last entry of the exact tables of rank agreement', () => {
    expect(chanceOfOneOrder(3, 3)).toBeCloseTo(0.028, 3);
    expect(chanceOfOneOrder(3, 4)).toBeCloseTo(0.0046, 4);
    expect(chanceOfOneOrder(4, 2)).toBeCloseTo(0.042, 3);
  });

  it('says how many must agree before luck is unlikely', () => {
    expect([2, 3, 4, 5].map(fewestTasters)).toEqual([6, 3, 2, 2]);
    expect(rankingSightWords({ samples: 3, tasters: 2 })[0]).toBe(
      'If both tasters put the 3 samples in one and the same order, guessing alone would do that once in 6 times: too often to build on. It takes at least 3 tasters.',
    );
    expect(rankingSightWords({ samples: 4, tasters: 6 })[0]).toContain('less than once in 1,000 times. The less');
  });
});
