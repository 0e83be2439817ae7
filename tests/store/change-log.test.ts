import { describe, expect, it } from 'vitest';
import { checkStore } from '#store/keeping/check-store.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { newSalt, rowText } from '#store/log/change-log.ts';
import { travel, undoState } from '#store/log/undo.ts';
import { newRowId } from '#store/row-id.ts';
import { fc } from '#tests/properties.ts';
import { temporaryKitchen } from './temporary-kitchen.ts';

const quiet = () => {};

function addTaster(kitchen: Kitchen, name: string): string {
  return kitchen.write({ request: 'tasters:save', summary: `Add ${name}` }, (writer) =>
    writer.insert('tasters', { name, avoids: '[]', avoids_alcohol: 0, note: null }),
  ).id;
}

function rename(kitchen: Kitchen, id: string, name: string): void {
  kitchen.write({ request: 'tasters:save', summary: `Rename to ${name}` }, (writer) =>
    writer.update('tasters', id, { name }),
  );
}

const names = (kitchen: Kitchen) =>
  kitchen.read.all<{ name: string }>('SELECT name FROM tasters ORDER BY name').map(({ name }) => name);

describe('writing', () => {
  it('puts before and after of each row into the log, in the same transaction', async () => {
    const kitchen = await temporaryKitchen();
    const id = addTaster(kitchen, 'Taster A');
    rename(kitchen, id, 'Taster B');
    const log = kitchen.read.all<{ before: string | null; after: string }>(
      "SELECT before, after FROM changes WHERE table_name = 'tasters' ORDER BY id",
    );
    expect(log.map(({ before, after }) => [before && JSON.parse(before).name, JSON.parse(after).name])).toEqual([
      [null, 'Taster A'],
      ['Taster A', 'Taster B'],
    ]);
    expect(() =>
      kitchen.write({ request: 'x', summary: 'x' }, (writer) => {
        writer.update('tasters', id, { name: 'Taster C' });
        throw new Error('half way');
      }),
    ).toThrow('half way');
    expect(names(kitchen)).toEqual(['Taster B']);
    expect(kitchen.read.one('SELECT count(*) AS n FROM steps WHERE request = ?', 'x')).toEqual({ n: 0 });
  });

  it('refuses an older edition of a row as changed-since', async () => {
    const kitchen = await temporaryKitchen();
    const id = addTaster(kitchen, 'Taster A');
    rename(kitchen, id, 'Taster B');
    const stale = () =>
      kitchen.write({ request: 'x', summary: 'x' }, (writer) => writer.update('tasters', id, { name: 'Taster C' }, 1));
    expect(stale).toThrow(expect.objectContaining({ code: 'changed-since' }));
    expect(names(kitchen)).toEqual(['Taster B']);
  });
});

describe('undo and redo', () => {
  it('take back and bring forward whole steps, in order', async () => {
    const kitchen = await temporaryKitchen();
    const id = addTaster(kitchen, 'Taster A');
    rename(kitchen, id, 'Taster B');
    expect(undoState(kitchen.read)).toMatchObject({ undo: 'Rename to Taster B', undoRefused: null, redo: null });
    travel(kitchen, 'undo');
    expect(names(kitchen)).toEqual(['Taster A']);
    travel(kitchen, 'undo');
    expect(names(kitchen)).toEqual([]);
    travel(kitchen, 'redo');
    travel(kitchen, 'redo');
    expect(names(kitchen)).toEqual(['Taster B']);
    expect(() => travel(kitchen, 'redo')).toThrow(expect.objectContaining({ code: 'nothing-to-undo' }));
    expect(checkStore(kitchen, quiet)).toEqual([]);
  });

  it('meant for one step take back that one alone', async () => {
    const kitchen = await temporaryKitchen();
    addTaster(kitchen, 'Taster A');
    const first = undoState(kitchen.read).undoStep?.step;
    const id = addTaster(kitchen, 'Taster B');
    const newest = undoState(kitchen.read).undoStep?.step;
    expect(() => travel(kitchen, 'undo', first)).toThrow(expect.objectContaining({ code: 'refused' }));
    expect(names(kitchen)).toEqual(['Taster A', 'Taster B']);
    travel(kitchen, 'undo', newest);
    expect(kitchen.read.row('tasters', id)).toBeUndefined();
    // With what came later taken back it is the first one's turn again.
    travel(kitchen, 'undo', first);
    expect(names(kitchen)).toEqual([]);
  });

  it('a new step ends what could be redone', async () => {
    const kitchen = await temporaryKitchen();
    addTaster(kitchen, 'Taster A');
    travel(kitchen, 'undo');
    addTaster(kitchen, 'Taster B');
    expect(undoState(kitchen.read).redo).toBeNull();
    travel(kitchen, 'undo');
    expect(names(kitchen)).toEqual([]);
  });

  it('refuse where a row has changed since, and say so', async () => {
    const kitchen = await temporaryKitchen();
    const id = addTaster(kitchen, 'Taster A');
    // A write past the log, as another program might do.
    kitchen.db.prepare('UPDATE tasters SET name = ? WHERE id = ?').run('Stranger', id);
    expect(() => travel(kitchen, 'undo')).toThrow(
      expect.objectContaining({ code: 'refused', message: expect.stringContaining('has changed since') }),
    );
    expect(names(kitchen)).toEqual(['Stranger']);
  });

  it('never offer the beginning of the kitchen itself', async () => {
    const kitchen = await temporaryKitchen();
    expect(undoState(kitchen.read)).toEqual({ undo: null, undoRefused: null, undoStep: null, redo: null });
    expect(() => travel(kitchen, 'undo')).toThrow(expect.objectContaining({ code: 'nothing-to-undo' }));
  });

  it('any mix of steps, undos and redos leaves rows and log agreeing (property)', async () => {
    const kitchen = await temporaryKitchen();
    let made = 0;
    fc.assert(
      fc.property(fc.array(fc.constantFrom('add', 'rename', 'undo', 'redo'), { maxLength: 12 }), (acts) => {
        for (const act of acts) {
          const any = kitchen.read.one<{ id: string }>('SELECT id FROM tasters LIMIT 1');
          made += 1;
          if (act === 'add') addTaster(kitchen, `Taster ${made}`);
          else if (act === 'rename' && any !== undefined) rename(kitchen, any.id, `Taster ${made}`);
          else if (act === 'undo' || act === 'redo') {
            try {
              travel(kitchen, act);
            } catch (error) {
              expect(error).toMatchObject({ code: expect.stringMatching(/^(nothing-to-undo|refused)$/) });
            }
          }
        }
        expect(checkStore(kitchen, quiet)).toEqual([]);
      }),
      { numRuns: 15, seed: 5 },
    );
  });
});

describe('checkStore(kitchen)', () => {
  it('finds a row changed past the log, a row that vanished, and a log entry altered', async () => {
    const kitchen = await temporaryKitchen();
    const [a, b] = [addTaster(kitchen, 'Taster A'), addTaster(kitchen, 'Taster B')];
    expect(checkStore(kitchen, quiet)).toEqual([]);
    kitchen.db.prepare('UPDATE tasters SET name = ? WHERE id = ?').run('Stranger', a);
    kitchen.db.prepare('DELETE FROM tasters WHERE id = ?').run(b);
    const problems = checkStore(kitchen, quiet);
    expect(problems).toHaveLength(2);
    expect(problems.join(' ')).toContain(a);
    expect(problems.join(' ')).toContain(`(${b}) is missing`);
    kitchen.db.prepare("UPDATE changes SET after = replace(after, 'Taster A', 'Stranger') WHERE row_id = ?").run(a);
    expect(checkStore(kitchen, quiet).join(' ')).toContain('change log is broken');
  });
});

describe('newRowId(now)', () => {
  it('is a UUID version 7 that sorts by making, also within one millisecond', () => {
    const ids = Array.from({ length: 6000 }, () => newRowId(1_800_000_000_000));
    expect(new Set(ids).size).toBe(6000);
    expect([...ids].sort()).toEqual(ids);
    for (const id of ids.slice(0, 20)) {
      expect(id).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
    }
    expect(Number.parseInt(newRowId(1_900_000_000_000).replaceAll('-', '').slice(0, 12), 16)).toBe(1_900_000_000_000);
  });
});

describe('rowText(row)', () => {
  it('is the JSON of the row with its columns in alphabetical order', () => {
    const value = fc.oneof(
      fc.constant(null),
      fc.double({ noNaN: true, noDefaultInfinity: true }),
      fc.string({ unit: 'binary' }),
    );
    fc.assert(
      fc.property(fc.dictionary(fc.string(), value), (row) => {
        expect(rowText(row)).toBe(JSON.stringify(row, Object.keys(row).sort()));
      }),
    );
    expect(rowText({ z: 1, a: 'x', ünï: null })).toBe('{"a":"x","z":1,"ünï":null}');
  });
});

describe('newSalt()', () => {
  it('never comes twice, also over many draws from the system', () => {
    const salts = Array.from({ length: 1000 }, newSalt);
    expect(new Set(salts).size).toBe(1000);
    for (const salt of salts) expect(salt).toMatch(/^[0-9a-f]{32}$/);
  });
});
