import { describe, expect, it } from 'vitest';
import { temporaryDesk } from '#tests/store/temporary-kitchen.ts';
import { preparedTrial } from './example-trial.ts';

describe('kitchen:find', () => {
  it('finds jars, trials, tasters and pantry by every word, without minding case and accents', async () => {
    const test = await temporaryDesk();
    const { trial, jars } = await preparedTrial(test);
    await test.ask('tasters:save', { name: 'Ágnes Öz' });
    const find = async (words: string) => (await test.ask('kitchen:find', { words })).found;
    expect((await find('how many'))[0]).toMatchObject({ kind: 'trial', id: trial, name: 'How many days?' });
    expect((await find('agnes'))[0]).toMatchObject({ kind: 'taster', name: 'Ágnes Öz' });
    const label = jars[0]?.label ?? '';
    expect(await find(`jar ${label}`)).toContainEqual(
      expect.objectContaining({ kind: 'jar', id: jars[0]?.id, name: `Jar ${label}` }),
    );
    expect((await find('raspb'))[0]).toMatchObject({ kind: 'ingredient' });
    expect(await find('days zebra')).toEqual([]);
  });

  it('finds the jar alone whose label’s code was scanned', async () => {
    const test = await temporaryDesk();
    const { jars } = await preparedTrial(test);
    const jar = jars[1] ?? { id: '', label: '' };
    for (const code of [jar.id, ` ${jar.id.toUpperCase()}`]) {
      const { found, more } = await test.ask('kitchen:find', { words: code });
      expect([found, more]).toMatchObject([[{ kind: 'jar', id: jar.id, name: `Jar ${jar.label}` }], 0]);
    }
  });

  it('puts what begins with the word first, and says how many more there are', async () => {
    const { ask, fail } = await temporaryDesk();
    for (const name of ['Oat Bo', 'Bo', 'Abo', 'Bob']) await ask('tasters:save', { name });
    const { found, more } = await ask('kitchen:find', { words: 'bo', most: 3 });
    expect(found.map(({ name }) => name)).toEqual(['Bo', 'Bob', 'Oat Bo']);
    expect(more).toBeGreaterThan(0);
    expect(await fail('kitchen:find', { words: '   ' })).toMatchObject({ code: 'invalid-input', path: ['words'] });
  });

  it('takes words that mean something to a database as words', async () => {
    const { ask } = await temporaryDesk();
    await ask('tasters:save', { name: '100% _real_' });
    expect((await ask('kitchen:find', { words: '%' })).found.map(({ name }) => name)).toEqual(['100% _real_']);
    expect((await ask('kitchen:find', { words: "'; DROP" })).found).toEqual([]);
  });
});
