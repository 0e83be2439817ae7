import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, inject, it, onTestFinished } from 'vitest';
import { openDeskLine } from '#hosts/desk-line.ts';
import { temporaryFolder } from '#tests/store/temporary-kitchen.ts';

const worker = new URL(inject('deskWorker'));
const unknown = 'There is no request called “{0}”.';

/** A desk with these files among a person's own translations. */
function deskWith(files: Readonly<Record<string, string>>) {
  const folder = temporaryFolder();
  const ownWords = join(folder, 'words');
  mkdirSync(ownWords);
  for (const [name, text] of Object.entries(files)) writeFileSync(join(ownWords, name), text);
  const store = join(folder, 'k.sidejar');
  const line = openDeskLine({ worker, store, ownWords });
  onTestFinished(() => line.close());
  let asked = 0;
  return {
    store,
    ownWords,
    ask(name: string, input: unknown, language?: string) {
      asked += 1;
      const ways = language === undefined ? {} : { ways: { language, decimal: '.' as const } };
      return line.ask({ ask: `a${asked}`, name, input, ...ways });
    },
  };
}

describe('a desk with translations', () => {
  it('lists the languages, says what is wrong with a file, and passes other files by', async () => {
    const { ask } = deskWith({
      'de.json': JSON.stringify({ [unknown]: 'Eine Bitte „{0}“ gibt es nicht.' }),
      'fr.json': '{ "Today": ',
      'it.json': JSON.stringify({ Nowhere: 'x' }),
      'en.json': '{}',
      'no words.json': '{}',
      'notes.txt': '',
    });
    expect(await ask('words:languages', {})).toEqual({
      ok: true,
      value: {
        languages: [
          { language: 'de', problem: null },
          { language: 'fr', problem: 'The words in fr.json can’t be read: the file is no whole JSON.' },
          { language: 'it', problem: 'One text in it.json belongs to nothing that is said here and is left out.' },
        ],
      },
    });
  });

  it('answers each request in the language that it asks for, and in English otherwise', async () => {
    const { ask } = deskWith({ 'de.json': JSON.stringify({ [unknown]: 'Eine Bitte „{0}“ gibt es nicht.' }) });
    const answers = await Promise.all([ask('x', {}, 'de'), ask('x', {}), ask('x', {}, 'de'), ask('x', {}, 'fr')]);
    expect(answers.map((answer) => (answer.ok ? '' : answer.error.message))).toEqual([
      'Eine Bitte „x“ gibt es nicht.',
      'There is no request called “x”.',
      'Eine Bitte „x“ gibt es nicht.',
      'There is no request called “x”.',
    ]);
  });

  it('gives the words of a language, or of the one that it is a kind of, and makes no kitchen for it', async () => {
    const { ask, store } = deskWith({ 'de.json': JSON.stringify({ [unknown]: 'Nein: {0}', Nowhere: 'x' }) });
    expect(await ask('words:read', { language: 'de-AT' })).toMatchObject({
      ok: true,
      value: { language: 'de', words: { [unknown]: 'Nein: {0}' }, unknown: 1 },
    });
    expect(await ask('words:read', { language: 'fr' })).toMatchObject({ error: { code: 'not-found' } });
    expect(existsSync(store)).toBe(false);
  });

  it('speaks a changed file once it was read again', async () => {
    const { ask, ownWords } = deskWith({ 'de.json': JSON.stringify({ [unknown]: 'Alt: {0}' }) });
    expect(await ask('x', {}, 'de')).toMatchObject({ error: { message: 'Alt: x' } });
    writeFileSync(join(ownWords, 'de.json'), JSON.stringify({ [unknown]: 'Neu: {0}' }));
    await ask('words:read', { language: 'de' }, 'de');
    expect(await ask('x', {}, 'de')).toMatchObject({ error: { message: 'Neu: x' } });
  });

  it('refuses what is no name of a language, and a file that is far too large', async () => {
    const { ask } = deskWith({ 'de.json': ' '.repeat(4_000_001) });
    for (const language of ['../k', 'de/../../x', '', 'x'.repeat(200), 'en']) {
      expect(await ask('words:read', { language }), language).toMatchObject({ ok: false });
    }
    expect(await ask('words:read', { language: 'de' })).toMatchObject({
      error: { code: 'too-large', message: 'The words in de.json are more than 4 MB.' },
    });
  });
});
