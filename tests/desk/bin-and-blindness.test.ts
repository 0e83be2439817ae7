import { describe, expect, it } from 'vitest';
import { type TestDesk, temporaryDesk } from '#tests/store/temporary-kitchen.ts';
import { daysPlan, preparedTrial } from './example-trial.ts';

async function openTasting(test: TestDesk) {
  const prepared = await preparedTrial(test);
  const built = await test.ask('tastings:build', {
    trial: prepared.trial,
    name: 'T',
    samples: prepared.jars.map(({ id }) => ({ jar: id })),
    tasters: prepared.tasters,
    seed: 9,
  });
  return { ...prepared, ...built };
}

describe('the bin', () => {
  it('brings rows back as they were last: a step that is no longer in it is not found', async () => {
    const test = await temporaryDesk();
    const { ask, fail } = test;
    const { tasting } = await openTasting(test);
    await ask('tastings:remove', { tasting });
    const first = (await ask('bin:list', {})).entries[0]?.step ?? 0;
    await ask('bin:restore', { step: first });
    await ask('tastings:close', { tasting });
    await ask('tastings:remove', { tasting });
    expect(await fail('bin:restore', { step: first })).toMatchObject({ code: 'not-found' });
    const [entry] = (await ask('bin:list', {})).entries;
    await ask('bin:restore', { step: entry?.step ?? 0 });
    expect((await ask('tastings:open', { tasting })).closedAt).not.toBeNull();
    expect((await ask('store:check', {})).ok).toBe(true);
  });

  it('puts no score into a tasting that was closed meanwhile, and over-allots no base', async () => {
    const test = await temporaryDesk();
    const { ask, fail } = test;
    const { tasting, codes } = await openTasting(test);
    const score = { taster: 'Taster A', sample: Object.values(codes)[0] ?? '', attribute: 'tang' };
    await ask('scores:enter', { tasting, scores: [{ ...score, score: 5 }] });
    await ask('scores:enter', { tasting, scores: [{ ...score, score: null }] });
    const step = (await ask('history:read', { limit: 1 })).steps[0]?.step ?? 0;
    await ask('tastings:close', { tasting });
    expect(await fail('bin:restore', { step })).toMatchObject({ code: 'refused' });

    const { base } = await ask('bases:start', { name: 'B', volume_mL: 2400 });
    const one = await ask('trials:save', { ...daysPlan, base, baseAvailable_mL: 2400 });
    await ask('trials:remove', { trial: one.trial });
    await ask('trials:save', { ...daysPlan, base, baseAvailable_mL: 2400 });
    const removed = (await ask('bin:list', {})).entries[0]?.step ?? 0;
    expect(await fail('bin:restore', { step: removed })).toMatchObject({ code: 'refused', path: ['step'] });
    expect((await ask('bases:open', { base })).left_mL).toBe(0);
  });
});

describe('while a tasting is open', () => {
  it('neither the order of ids nor a code tells which jar is which', async () => {
    const test = await temporaryDesk();
    const { tasting } = await openTasting(test);
    const { sampleList } = await test.ask('tastings:open', { tasting });
    const byId = [...sampleList].sort((a, b) => a.id.localeCompare(b.id)).map(({ code }) => code);
    expect(byId).toEqual([...byId].sort());
  });
});

describe('a table with an open quotation mark', () => {
  it('names where it is instead of swallowing the rest', async () => {
    const test = await temporaryDesk();
    const { tasting, codes } = await openTasting(test);
    const code = Object.values(codes)[0] ?? '';
    const table = `taster,sample,tang\nTaster A,${code},5\n"Taster B,${code},6\nTaster C,${code},7\n`;
    const { accepted, refused } = await test.ask('scores:import', { tasting, table, preview: true });
    expect(accepted).toBe(1);
    expect(refused.map(({ code: why }) => why)).toContain('quotes-unclosed');
  });
});

describe('a jar', () => {
  it('whose mould was a mistake is no longer discarded; starting takes from what is on hand', async () => {
    const { ask } = await temporaryDesk();
    await ask('pantry:stock', { name: 'raspberries', onHand_g: 100 });
    const { jars } = await ask('trials:save', daysPlan);
    const [a = '', b = ''] = jars.map(({ id }) => id);
    await ask('jars:start', { jars: [a] });
    const onHand = async () =>
      (await ask('pantry:list', {})).ingredients.find(({ name }) => name === 'raspberries')?.onHand_g;
    expect(await onHand()).toBe(25);
    await ask('jars:start', { jars: [b] });
    expect(await onHand()).toBe(0);
    const { sighting } = await ask('sightings:log', { jar: a, what: 'mould' });
    await ask('sightings:correct', { sighting });
    expect((await ask('jars:open', { jar: a })).jar.state).toBe('fermenting');
  });
});

describe('names', () => {
  it('that people read as one are one, accents and case included; odd characters are refused', async () => {
    const { ask, fail } = await temporaryDesk();
    await ask('tasters:save', { name: 'Émile' });
    expect(await fail('tasters:save', { name: 'émile' })).toMatchObject({ code: 'refused', path: ['name'] });
    for (const name of ['a\ud800b', 'two\nlines', 'nul\u0000']) {
      expect(await fail('tasters:save', { name })).toMatchObject({ code: 'invalid-input', path: ['name'] });
    }
  });
});
