import { describe, expect, it } from 'vitest';
import { name, note } from '#shared/contract/fields.ts';
import { readCarriedFile } from '#store/carry/carried-file.ts';
import { temporaryDesk } from '#tests/store/temporary-kitchen.ts';

describe('texts that read otherwise than they are', () => {
  // Directional formatting characters: Unicode Standard Annex #9, sections 2.1 to 2.3.
  it.each(['\u202a', '\u202b', '\u202c', '\u202d', '\u202e'])('%j is refused in names and in remarks', (turn) => {
    expect(name.safeParse(`Kefir ${turn}gnp`).success).toBe(false);
    expect(note.safeParse(`Kefir ${turn}gnp`).success).toBe(false);
  });

  it.each(['\u2066', '\u2067', '\u2068', '\u2069', '\0', '\n', '\u2028', '\u0085', '\ud800'])(
    '%j is refused in names',
    (odd) => {
      expect(name.safeParse(`Kefir ${odd}gnp`).success).toBe(false);
    },
  );

  it.each(['قُرنفل', 'כוסברה', 'ชา', 'זנגביל \u200fX', '👩‍🍳 Ann', 'Zoë', 'می‌خوش'])(
    '%s is a name like any other',
    (word) => {
      expect(name.parse(word)).toBe(word);
    },
  );

  // Written to SQLite, it would become U+FFFD: another text than the change log tells.
  it('half a surrogate pair is refused wherever it stands, and at its place', async () => {
    const { desk, fail, ask } = await temporaryDesk();
    expect(await fail('kitchen:change', { currency: '\ud800' })).toMatchObject({
      code: 'invalid-input',
      path: ['currency'],
    });
    expect(await fail('tastings:warn', { jars: ['a', '\udc00'], tasters: [] })).toMatchObject({ path: ['jars', 1] });
    expect(await ask('store:check', {})).toEqual({ ok: true, problems: [] });
    desk.close();
  });

  it('none comes in through a carried file either, nor through a question', async () => {
    const { kitchen, desk, ask, fail } = await temporaryDesk();
    await ask('tasters:save', { name: 'Taster A' });
    const stood = kitchen.read.all('SELECT * FROM tasters');
    const row = { ...(stood[0] as object), id: '019de28d-3c00-728a-b5e5-f6ae4ebf5d08' };
    for (const bad of ['a\u202eb', 'a\u2067b', 'a\0b', 'a\nb']) {
      const text = JSON.stringify({
        format: 'sidejar rows',
        holds: 'kitchen',
        schema: 10,
        from: 'x',
        tables: { tasters: [{ ...row, name: bad }] },
      });
      expect(await fail('data:takeIn', { text })).toMatchObject({ code: 'invalid-input' });
    }
    expect(kitchen.read.all('SELECT * FROM tasters')).toEqual(stood);
    desk.close();
  });
});

const head = '{"format":"sidejar rows","holds":"kitchen","schema":10,"from":"x","tables":{"tasters":';
const size = 4_000_000;

describe('a carried file made to exhaust whoever reads it', () => {
  const bombs: [what: string, body: string, code: string][] = [
    ['a nest without end', '['.repeat(size), 'too-large'],
    ['rows without anything in them', `[${'{},'.repeat(size / 3)}{}]`, 'too-large'],
    ['numbers for rows', `[${'1,'.repeat(size / 2)}1]`, 'invalid-input'],
    [
      'one row of endless columns',
      `[{${Array.from({ length: size / 12 }, (_, at) => `"k${at}":null`).join()}}]`,
      'too-large',
    ],
    ['one endless cell', `[{"id":"${'x'.repeat(size)}"}]`, 'invalid-input'],
    ['a member that every object has', '[{"__proto__":"x"}]', 'invalid-input'],
    ['half a file', '[{"id":', 'ill-formed-json'],
  ];

  it.each(bombs)('%s is refused in no time', async (_what, body, code) => {
    const { kitchen, desk, fail } = await temporaryDesk();
    const before = kitchen.read.one('SELECT max(id) AS n FROM changes');
    const begun = process.cpuUsage();
    expect(
      await fail('data:takeIn', { text: `${head}${body}${code === 'ill-formed-json' ? '' : '}}'}` }),
    ).toMatchObject({ code });
    const { user, system } = process.cpuUsage(begun);
    expect((user + system) / 1000).toBeLessThan(3000);
    expect(kitchen.read.one('SELECT max(id) AS n FROM changes')).toEqual(before);
    desk.close();
  });

  it('never reaches an object’s nature', () => {
    try {
      readCarriedFile(`${head}[{"__proto__":"x","constructor":"y"}]}}`, 10);
    } catch {
      // Refused or not: what counts stands below.
    }
    expect(({} as { x?: string }).x).toBeUndefined();
    expect(Object.getPrototypeOf({})).toBe(Object.prototype);
  });
});

describe('a request made to exhaust the desk', () => {
  // Before, a million empty rows took a minute and 2.6 GB: one complaint was made for each.
  const bombs: [what: string, input: unknown][] = [
    ['a million bad rows', { scores: new Array(1_000_000).fill({}) }],
    ['ten million numbers for rows', { scores: new Array(10_000_000).fill(1) }],
    [
      'a million names',
      { scores: [], levels: Object.fromEntries(Array.from({ length: 300_000 }, (_, at) => [`k${at}`, 1])) },
    ],
  ];

  it.each(bombs)('%s: one complaint, at once', async (_what, input) => {
    const { desk, fail } = await temporaryDesk();
    const begun = process.cpuUsage();
    expect(['invalid-input', 'too-large']).toContain((await fail('panel:analyse', input)).code);
    const { user, system } = process.cpuUsage(begun);
    expect((user + system) / 1000).toBeLessThan(3000);
    desk.close();
  });
});
