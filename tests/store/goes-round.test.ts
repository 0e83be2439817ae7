import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { daysPlan } from '../desk/example-trial.ts';
import { fill } from '../fixtures/fill-kitchen.ts';
import { type TestDesk, temporaryDesk, temporaryFolder } from './temporary-kitchen.ts';

type Answer = Record<string, unknown>;

async function exported(test: TestDesk) {
  const folder = join(temporaryFolder(), 'out');
  const { files } = await test.ask('data:export', { to: folder });
  const names = files.map(({ name }) => name);
  return { folder, names, text: (name: string) => readFileSync(join(folder, name), 'utf8') };
}

/** Remarks over several lines, in several scripts, and such as a spreadsheet would run. */
const notes = ['=1+1\n@x', '"=x"', 'a\r\nb\tc', '\u2067שלום\u2069', '👩‍👩‍👧‍👦', '\u200b=1'];

/** Rows of every kind, bin and erasures among them, and words as people may write them. */
async function oddKitchen(): Promise<TestDesk> {
  const test = await temporaryDesk();
  const ask = (name: string, input: unknown) => test.ask(name as never, input as never) as Promise<Answer>;
  await fill(ask);
  const people = await Promise.all(notes.map((note, place) => ask('tasters:save', { name: `עברית ${place}`, note })));
  await ask('bases:start', { name: '=base', volume_mL: 900, wentIn: 'water, 900 g\nsugar, 60 g\nlemon peel' });
  const jars = test.kitchen.read.all<{ id: string; trial_id: string }>(
    'SELECT id, trial_id FROM jars WHERE discarded_at IS NULL ORDER BY id',
  );
  const tasters = people.slice(0, 1).map(({ taster }) => taster);
  const shared = { trial: jars[0]?.trial_id, samples: jars.map(({ id }) => ({ jar: id })), tasters };
  const sweetness = { name: 'sweetness', kind: 'just-about-right', low: -2, high: 2, lowWord: 'too\nlittle' };
  const judged = await ask('tastings:build', { ...shared, name: 'Judged', attributes: [sweetness] });
  const ranked = await ask('tastings:build', { ...shared, name: 'Ranked', ranked: true });
  for (const [{ tasting, codes }, attribute, score] of [
    [judged, 'sweetness', -1],
    [ranked, 'place', 1],
  ] as const) {
    const samples = Object.values(codes as Record<string, string>);
    const scores = samples.map((sample) => ({ taster: 'עברית 0', sample, attribute, score }));
    await ask('scores:enter', { tasting, scores, ties: true });
  }
  return test;
}

describe('a kitchen of every kind of row', () => {
  it('goes round through its export, the same to the byte', async () => {
    const first = await exported(await oddKitchen());
    expect(first.names).toEqual(expect.arrayContaining(['photos', 'presentations.csv', 'bottle_openings.csv']));
    const other = await temporaryDesk();
    const taken = await other.ask('data:takeIn', { file: join(first.folder, 'kitchen.json') });
    expect(taken).toMatchObject({ taken: true, kept: [], renamed: [] });
    const second = await exported(other);
    expect(second.names).toEqual(first.names);
    for (const name of first.names) {
      if (name !== 'photos') expect(second.text(name), name).toBe(first.text(name));
    }
    expect(readdirSync(join(second.folder, 'photos'))).toEqual(readdirSync(join(first.folder, 'photos')));
    expect(await other.ask('store:check', {})).toEqual({ ok: true, problems: [] });
  });

  it('describes its tables so that a key names only a table that is written too', async () => {
    const test = await temporaryDesk();
    await test.ask('trials:save', daysPlan);
    const { tables } = JSON.parse((await exported(test)).text('csv-metadata.json')) as {
      tables: { url: string; tableSchema: { foreignKeys: { reference: { resource: string } }[] } }[];
    };
    const urls = tables.map(({ url }) => url);
    expect(urls).toContain('trials.csv');
    const keys = tables.flatMap(({ tableSchema }) => tableSchema.foreignKeys);
    expect(keys.length).toBeGreaterThan(2);
    for (const { reference } of keys) expect(urls).toContain(reference.resource);
  });

  it('keeps a name whole where the sending kitchen’s is put behind it, and takes no words that read otherwise', async () => {
    const name = `${'x'.repeat(139)}😀 and so on`;
    const [here, there] = [await temporaryDesk(), await temporaryDesk()];
    for (const test of [here, there]) await test.ask('tasters:save', { name });
    await there.ask('kitchen:change', { name: `${'k'.repeat(39)}😀 kitchen` });
    const text = (await exported(there)).text('kitchen.json');
    const { renamed } = await here.ask('data:takeIn', { text });
    expect(renamed).toHaveLength(1);
    expect(renamed[0]?.becomes.isWellFormed()).toBe(true);
    expect(await here.ask('store:check', {})).toEqual({ ok: true, problems: [] });
    const turned = JSON.stringify({ ...JSON.parse(text), from: 'a\u202eb' });
    expect(await (await temporaryDesk()).fail('data:takeIn', { text: turned })).toMatchObject({
      code: 'invalid-input',
    });
  });
});
