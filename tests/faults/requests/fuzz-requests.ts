import { copyFileSync, existsSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { z } from 'zod';
import { type Desk, deskOf } from '#desk/desk.ts';
import { allRequests, type RequestName } from '#shared/contract/all-requests.ts';
import { Failure } from '#shared/failure.ts';
import { checkStore } from '#store/keeping/check-store.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { openKitchen } from '#store/open-kitchen.ts';
import { type Sqlite, sqliteDriver } from '#store/sqlite-driver.ts';
import { arbitraryOf, type Shape } from './arbitrary-of.ts';
import { envelopeProblem } from './envelope-problem.ts';
import { junk } from './junk.ts';
import { knownOf } from './known-of.ts';
import { nearValid } from './near-valid.ts';

/** What a run of made-up requests came to. */
export interface FuzzedRequests {
  readonly tries: number;
  readonly answered: number;
  readonly refused: number;
  readonly stopped: number;
  /** The longest by processor time, which other programs on the machine do not lengthen. */
  readonly slowest: { readonly name: string; readonly cpu_ms: number };
  readonly problems: readonly string[];
}

export interface FuzzOptions {
  readonly tries: number;
  readonly seed: number;
  readonly each?: (done: number) => void;
}

const triesEach = 1000;
const most_ms = 1000;
const names = Object.keys(allRequests) as RequestName[];

/** Requests that fill, empty or copy a whole kitchen come less often, so that the others meet a full one. */
const seldom: ReadonlySet<string> = new Set(
  names.filter((name) => allRequests[name].long || name.startsWith('kitchen:')),
);

interface Try {
  readonly name: RequestName;
  readonly input: unknown;
}

type Making = readonly { readonly name: RequestName; readonly input: fc.Arbitrary<unknown> }[];

function makingOf(known: Parameters<typeof arbitraryOf>[2]): Making {
  return names.map((name) => {
    const shape = z.toJSONSchema(allRequests[name].input as z.ZodType, {
      io: 'input',
      unrepresentable: 'any',
      reused: 'inline',
    });
    const valid = arbitraryOf(shape as Shape, '', known);
    return {
      name,
      input: fc.oneof(
        { weight: 10, arbitrary: valid },
        { weight: 6, arbitrary: nearValid(valid) },
        { weight: 1, arbitrary: junk },
      ),
    };
  });
}

function triesOf(making: Making, seed: number, count: number): Try[] {
  const pool = making.flatMap((each) => (seldom.has(each.name) ? [each] : [each, each, each, each]));
  const one = fc.nat(pool.length - 1).chain((at) => {
    const { name, input } = pool[at] ?? { name: 'kitchen:open' as const, input: junk };
    return input.map((made) => ({ name, input: made }));
  });
  return fc.sample(one, { seed, numRuns: count });
}

/** The kitchen as another program sees it: SQLite counts up when anybody else has committed. */
function committed(other: Sqlite): number {
  return Number(other.pragma('data_version', { simple: true }));
}

function shown(input: unknown): string {
  const text = JSON.stringify(input, (_key, value: unknown) => (typeof value === 'bigint' ? `${value}n` : value));
  return (text ?? String(input)).slice(0, 600);
}

interface Bench {
  readonly kitchen: Kitchen;
  readonly desk: Desk;
  readonly other: Sqlite;
  /** Errors of our own since the last request. */
  readonly mistakes: unknown[];
}

async function openBench(base: string, folder: string): Promise<Bench> {
  const file = join(folder, 'k.sidejar');
  copyFileSync(base, file);
  const kitchen = await openKitchen(file, { clock: () => new Date('2026-05-02T08:00:00.000Z') });
  const mistakes: unknown[] = [];
  const Database = sqliteDriver();
  const desk = deskOf(kitchen, { checkAnswers: true, onMistake: (error) => mistakes.push(error) });
  return { kitchen, desk, other: new Database(file, { readonly: true }), mistakes };
}

async function tryOne(
  { desk, other, mistakes }: Bench,
  { name, input }: Try,
): Promise<{ problems: string[]; code: string; cpu_ms: number }> {
  mistakes.splice(0);
  const before = committed(other);
  const begun = process.cpuUsage();
  const spent_ms = (): number => {
    const { user, system } = process.cpuUsage(begun);
    return (user + system) / 1000;
  };
  // Somebody waits half the limit, then presses "Stop".
  const envelope = await desk.handle(name, input, {
    progress() {},
    assertGoing() {
      if (spent_ms() > most_ms / 2) throw new Failure('stopped', 'Stopped. Nothing was changed.');
    },
  });
  const cpu_ms = spent_ms();
  const problems: string[] = [];
  const problem = envelopeProblem(envelope);
  if (problem !== null) problems.push(problem);
  if (mistakes[0] !== undefined)
    problems.push(mistakes[0] instanceof Error ? (mistakes[0].stack ?? '').slice(0, 900) : String(mistakes[0]));
  if (cpu_ms > most_ms) problems.push(`took ${Math.round(cpu_ms)} ms`);
  const mayWrite = envelope.ok && allRequests[name].writes;
  if (!mayWrite && committed(other) !== before)
    problems.push(envelope.ok ? 'a reading request wrote' : 'a refused request wrote');
  return { problems, code: envelope.ok ? 'ok' : envelope.error.code, cpu_ms };
}

/**
 * Puts made-up requests to the desk over copies of the sample kitchen: well-formed ones, ones spoilt in a place or two, and junk.
 *
 * Each must settle as an envelope of the contract, within a second of processor time (a long one within a second when stopped half-way
 * through it); what is refused must have written nothing, nor may what only reads; and after every thousand the kitchen must be whole.
 */
export async function fuzzRequests({ tries, seed, each = () => {} }: FuzzOptions): Promise<FuzzedRequests> {
  const root = mkdtempSync(join(existsSync('/dev/shm') ? '/dev/shm' : tmpdir(), 'sidejar-fuzz-'));
  const base = join(root, 'base.sidejar');
  const stood = process.cwd();
  const counts = { ok: 0, stopped: 0, refused: 0 };
  const problems: string[] = [];
  let slowest = { name: '', cpu_ms: 0 };
  try {
    const kitchen = await openKitchen(base, { clock: () => new Date('2026-05-01T08:00:00.000Z') });
    await deskOf(kitchen).handle('kitchen:sample', {});
    const making = makingOf(await knownOf(kitchen, root));
    kitchen.db.pragma('wal_checkpoint(TRUNCATE)');
    kitchen.close();
    for (let done = 0; done < tries; done += triesEach) {
      const folder = join(root, 'k');
      mkdirSync(folder);
      // A relative place in a request is one in here.
      process.chdir(folder);
      const bench = await openBench(base, folder);
      for (const [at, made] of triesOf(making, seed + done, Math.min(triesEach, tries - done)).entries()) {
        const result = await tryOne(bench, made);
        counts[result.code === 'ok' || result.code === 'stopped' ? result.code : 'refused'] += 1;
        if (result.cpu_ms > slowest.cpu_ms) slowest = { name: made.name, cpu_ms: result.cpu_ms };
        for (const problem of result.problems)
          problems.push(`${seed + done}/${at} ${made.name} ${problem}\n      ${shown(made.input)}`);
      }
      for (const problem of checkStore(bench.kitchen, () => {}))
        problems.push(`${seed + done}: the kitchen is not whole: ${problem}`);
      bench.other.close();
      bench.desk.close();
      process.chdir(stood);
      rmSync(folder, { recursive: true, force: true });
      each(Math.min(done + triesEach, tries));
    }
  } finally {
    process.chdir(stood);
    rmSync(root, { recursive: true, force: true });
  }
  return { tries, answered: counts.ok, refused: counts.refused, stopped: counts.stopped, slowest, problems };
}
