import { describe, expect, it } from 'vitest';
import { units } from '#core/units/unit-table.ts';
import { sightWords } from '#renderer/pages/taste/panel-sight-words.ts';
import { firstDraft, ownAttribute, readDraft } from '#renderer/pages/taste/tasting-draft.ts';
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
    const own = { ...ownAttribute('own 1'), name: 'funk', lowWord: 'clean', highWord: 'barnyard' };
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

describe('sightWords', () => {
  const sight = { samples: 4, tasters: 6, replicates: 1, detectableDifference: 3.914, tastersNeeded: 19 };

  it('says which gap would show, and how many tasters a finer one takes', () => {
    const lines = sightWords(sight);
    expect(lines[0]).toBe('With 6 tasters a gap of about 3.9 points would most likely show.');
    expect(lines.join(' ')).toContain('about 19 tasters');
  });

  it('says what one and two tasters can and can’t tell', () => {
    const one = sightWords({ ...sight, tasters: 1, detectableDifference: null });
    expect(one.join(' ')).toMatch(/like best.*can’t be told/);
    const two = sightWords({ ...sight, tasters: 2, detectableDifference: 11.9 });
    expect(two[0]).toContain('hardly any gap');
    expect(two.join(' ')).toContain('Two tasters');
  });

  it('compares nothing with one jar', () => {
    expect(sightWords({ ...sight, samples: 1 })).toHaveLength(1);
  });
});
