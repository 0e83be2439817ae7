import { spawn } from 'node:child_process';
import { chmodSync, existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { openKitchen } from '#store/open-kitchen.ts';
import { sqliteDriver } from '#store/sqlite-driver.ts';
import { temporaryFolder } from '#tests/store/temporary-kitchen.ts';

const root = join(import.meta.dirname, '..', '..');

interface Outcome {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs the command as a shell would, through the same door as `npm run -s sidejar`. */
function sidejar(args: string[], input = ''): Promise<Outcome> {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, ['scripts/run.cjs', 'electron/hosts/headless/main.ts', ...args], {
      cwd: root,
    });
    let out = '';
    let err = '';
    child.stdout.on('data', (part: Buffer) => (out += part.toString()));
    child.stderr.on('data', (part: Buffer) => (err += part.toString()));
    child.stdin.on('error', () => {});
    child.stdin.end(input);
    // Not at its exit: what it said may still be on its way then.
    child.on('close', (code) => resolve({ code, out, err }));
  });
}

const newStore = () => join(temporaryFolder(), 'k.sidejar');
const failure = ({ err }: Outcome) =>
  JSON.parse(err.trim().split('\n').at(-1) ?? '') as { code: string; message: string };

describe('npm run -s sidejar -- <request>', () => {
  it('answers with the value alone on standard output', async () => {
    const store = newStore();
    const saved = await sidejar(['tasters:save', '--store', store], '{"name":"Taster A"}');
    expect(saved).toMatchObject({ code: 0, err: '' });
    const listed = await sidejar(['tasters:list', '--store', store]);
    expect(JSON.parse(listed.out)).toMatchObject({ tasters: [{ name: 'Taster A' }] });
  });

  it('fails with code 1, a typed failure on standard error, nothing on standard output and no stack', async () => {
    const store = newStore();
    const tries: [string[], string, string][] = [
      [['trials:nothing', '--store', store], '{}', 'unknown-request'],
      [['tasters:save', '--store', store], '{}', 'invalid-input'],
      [['tasters:save', '--store', store], '{"name":NaN}', 'ill-formed-json'],
      [['tasters:save', '--store', store], `{"name":"${'x'.repeat(10_000_000)}"}`, 'invalid-input'],
    ];
    for (const [args, input, code] of tries) {
      const outcome = await sidejar(args, input);
      expect(outcome.code).toBe(1);
      expect(outcome.out).toBe('');
      expect(failure(outcome).code).toBe(code);
      expect(outcome.err).not.toMatch(/^\s+at /m);
    }
  }, 60_000);

  it('says what is wrong with a store: not a database, newer, read-only, locked', async () => {
    const folder = temporaryFolder();
    const letter = join(folder, 'letter.sidejar');
    writeFileSync(letter, 'x'.repeat(4096));
    expect(failure(await sidejar(['trials:list', '--store', letter])).code).toBe('store-not-a-kitchen');

    const newer = join(folder, 'newer.sidejar');
    const kitchen = await openKitchen(newer);
    kitchen.db.pragma('user_version = 990');
    kitchen.close();
    const bytes = readFileSync(newer);
    expect(failure(await sidejar(['trials:list', '--store', newer])).code).toBe('store-newer');
    expect(readFileSync(newer).equals(bytes)).toBe(true);

    const still = join(folder, 'still.sidejar');
    (await openKitchen(still)).close();
    chmodSync(still, 0o444);
    expect((await sidejar(['trials:list', '--store', still])).code).toBe(0);
    expect(failure(await sidejar(['kitchen:sample', '--store', still])).code).toBe('store-read-only');

    const busy = join(folder, 'busy.sidejar');
    (await openKitchen(busy)).close();
    const Database = sqliteDriver();
    const other = new Database(busy);
    other.exec('BEGIN EXCLUSIVE');
    expect(failure(await sidejar(['tasters:save', '--store', busy], '{"name":"A"}')).code).toBe('store-locked');
    other.close();
  }, 60_000);

  it('makes a kitchen only for a request that writes: a mistyped file is missing, not empty', async () => {
    const store = newStore();
    for (const request of ['store:check', 'store:backup', 'trials:list']) {
      expect(failure(await sidejar([request, '--store', store])).code).toBe('store-missing');
    }
    expect(existsSync(store)).toBe(false);
  }, 60_000);

  it('without a request it says how to use it and names the requests', async () => {
    const outcome = await sidejar([]);
    expect(outcome.code).toBe(1);
    expect(outcome.err).toContain('Usage: npm run -s sidejar');
    expect(outcome.err).toContain('panel:analyse');
  });
});
