import { type ChildProcess, spawn } from 'node:child_process';
import { copyFileSync, existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { setTimeout as sleep } from 'node:timers/promises';
import { type SeededRandom, seededRandom } from '#core/numeric/seeded-random.ts';
import { checkStore } from '#store/keeping/check-store.ts';
import { openKitchen } from '#store/open-kitchen.ts';
import { sqliteDriver } from '#store/sqlite-driver.ts';
import { actName, actsInRound } from './scripted-acts.ts';

// What a try is: one process that works on a kitchen and is ended by SIGKILL at a random (seeded) moment after a random acknowledgement;
// then the kitchen is opened again and looked through. SIGKILL ends a program, not the machine: what the disk does at a power cut
// is looked at by cutting the log at each frame (cut-log.ts).

interface Told {
  readonly steps: number;
  readonly changes: number;
  readonly head: string;
  /** When it was told, in milliseconds of this process. */
  readonly at: number;
}

/** What an uninterrupted run says after opening (index 0) and after each act. */
export type Course = readonly Told[];

export interface KillReport {
  readonly tries: number;
  readonly survived: number;
  readonly lost: number;
  /** What was under way when the process was ended, and how often. */
  readonly during: Readonly<Record<string, number>>;
  /** How often the act under way stood whole after all: committed, but not yet acknowledged. */
  readonly unsaid: number;
  readonly problems: readonly string[];
}

interface Base {
  readonly name: string;
  readonly file: string;
  readonly course: Course;
}

const acts = actsInRound;

function start(child: string, file: string, most: number): ChildProcess {
  return spawn(process.execPath, [child, file, String(most)], { stdio: ['ignore', 'pipe', 'pipe'] });
}

interface Running {
  readonly process: ChildProcess;
  readonly told: Told[];
  /** Resolves when that many were told, or the process has ended. */
  until(count: number): Promise<void>;
  readonly opening: Promise<void>;
  readonly ended: Promise<void>;
  readonly complaint: () => string;
}

function watch(process: ChildProcess): Running {
  const told: Told[] = [];
  const waiting: { count: number; wake: () => void }[] = [];
  let complaint = '';
  let isOver = false;
  let opened = () => {};
  const opening = new Promise<void>((resolve) => {
    opened = resolve;
  });
  const wake = () => {
    for (const { count, wake: go } of waiting) if (isOver || told.length >= count) go();
  };
  process.stderr?.on('data', (part: Buffer) => {
    complaint += part.toString();
  });
  const ended = new Promise<void>((resolve) => {
    const lines = createInterface({ input: process.stdout ?? (undefined as never) });
    lines.on('line', (line) => {
      const words = line.split(' ');
      if (words[0] === 'opening') opened();
      else if (words.length >= 4) {
        const [steps = '0', changes = '0', head = ''] = words.slice(-3);
        told.push({ steps: Number(steps), changes: Number(changes), head, at: performance.now() });
      }
      wake();
    });
    process.once('close', () => {
      isOver = true;
      opened();
      wake();
      resolve();
    });
  });
  return {
    process,
    told,
    until: (count) =>
      told.length >= count || isOver
        ? Promise.resolve()
        : new Promise((resolve) => {
            waiting.push({ count, wake: resolve });
          }),
    opening,
    ended,
    complaint: () => complaint,
  };
}

/** After which acknowledgements an act of this kind follows: the first is the opening's. */
function placesOf(kind?: string): number[] {
  return Array.from({ length: acts }, (_, place) => place + 1).filter(
    (place) => kind === undefined || actName(place - 1) === kind,
  );
}

async function courseOf(child: string, base: string, folder: string): Promise<Course> {
  const file = join(folder, 'course.sidejar');
  copyFileSync(base, file);
  const run = watch(start(child, file, acts));
  await run.ended;
  if (run.told.length !== acts + 1) throw new Error(`The script did not run to its end: ${run.complaint()}`);
  for (const name of readdirSync(folder))
    if (name.startsWith('course')) rmSync(join(folder, name), { recursive: true });
  return run.told;
}

/** Waits a time that may be shorter than a timer's step. */
async function waitExactly(wait_ms: number): Promise<void> {
  const until = performance.now() + wait_ms;
  if (wait_ms > 2) await sleep(wait_ms - 1);
  while (performance.now() < until);
}

function isWhole(file: string): boolean {
  const Database = sqliteDriver();
  const db = new Database(file, { readonly: true });
  try {
    return db.pragma('integrity_check', { simple: true }) === 'ok';
  } finally {
    db.close();
  }
}

/** What is wrong with the kitchen after the kill; nothing when all that was acknowledged stands and nothing stands half. */
async function lookThrough(
  file: string,
  told: readonly Told[],
  course: Course,
): Promise<{ faults: string[]; at: number }> {
  const faults: string[] = [];
  const folder = join(file, '..');
  for (const place of [folder, join(folder, 'backups')]) {
    if (!existsSync(place)) continue;
    // Copies under their final name are whole, whenever the program was ended.
    for (const name of readdirSync(place)) {
      if (!name.endsWith('.sidejar') || join(place, name) === file) continue;
      if (!isWhole(join(place, name))) faults.push(`a copy is not whole: ${name}`);
    }
  }
  const kitchen = await openKitchen(file);
  try {
    faults.push(...checkStore(kitchen, () => {}));
    const last = told.at(-1);
    if (last !== undefined && kitchen.read.one('SELECT id FROM changes WHERE hash = ?', last.head) === undefined) {
      faults.push('an acknowledged write is not there');
    }
    const count = (table: string) => kitchen.read.one<{ n: number }>(`SELECT count(*) AS n FROM ${table}`)?.n;
    const [steps, changes] = [count('steps'), count('changes')];
    // The acknowledged act, or the one after it whole: nothing between.
    const may = told.length === 0 ? course.slice(0, 1) : course.slice(told.length - 1, told.length + 1);
    const found = may.findIndex((each) => each.steps === steps && each.changes === changes);
    if (found < 0)
      faults.push(`half of an act stands: ${steps} steps and ${changes} changes after ${told.length - 1} acts`);
    const half = kitchen.read.one<{ n: number }>('SELECT count(*) AS n FROM drafts WHERE NOT json_valid(body)')?.n;
    if (half !== 0) faults.push('a draft is half written');
    return { faults, at: found };
  } finally {
    kitchen.close();
  }
}

/** @param meets the kind of work that is to be under way; without it any, or the opening */
async function oneTry(child: string, base: Base, random: SeededRandom, folder: string, meets?: string) {
  const own = mkdtempSync(join(folder, 'try-'));
  const file = join(own, 'k.sidejar');
  copyFileSync(base.file, file);
  // One in five is ended while it opens, and there an older kitchen is brought up to date.
  const opens = meets === undefined && random.uniform() < 0.2;
  const chosen = placesOf(meets);
  const after = opens ? 0 : (chosen[Math.floor(random.uniform() * chosen.length)] ?? 1);
  const from = opens ? undefined : base.course[after - 1];
  const span_ms = opens ? 60 : (base.course[after]?.at ?? 0) - (from?.at ?? 0);
  const wait_ms = random.uniform() * 1.3 * span_ms;
  const run = watch(start(child, file, acts));
  if (opens) await run.opening;
  else await run.until(after);
  await waitExactly(wait_ms);
  run.process.kill('SIGKILL');
  await run.ended;
  const { faults, at } = await lookThrough(file, run.told, base.course);
  if (run.complaint() !== '') faults.push(run.complaint());
  rmSync(own, { recursive: true, force: true });
  const under =
    run.told.length === 0 ? `opening ${base.name}` : run.told.length > acts ? 'ending' : actName(run.told.length - 1);
  return { faults, under, unsaid: at === 1 };
}

/** More tries than this don't help: the kind of work can't be met. */
const mostMore = 40;

export interface KillOptions {
  readonly tries: number;
  readonly seed: number;
  readonly child: string;
  /** Kitchens to work on, by a word for each. */
  readonly bases: Readonly<Record<string, string>>;
  /** Kinds of work that must be met: where chance passed one by, more tries are made for it. */
  readonly meets?: readonly string[];
  /** How many processes at once. */
  readonly atOnce?: number;
}

export async function killRuns({
  tries: least,
  seed,
  child,
  bases: files,
  meets = [],
  atOnce = 2,
}: KillOptions): Promise<KillReport> {
  const folder = mkdtempSync(join(tmpdir(), 'sidejar-kill-'));
  const bases: Base[] = [];
  for (const [name, file] of Object.entries(files))
    bases.push({ name, file, course: await courseOf(child, file, folder) });
  const during: Record<string, number> = {};
  const problems: string[] = [];
  let [survived, unsaid, tries] = [0, 0, 0];
  async function oneMore(meets?: string): Promise<void> {
    const number = tries;
    tries += 1;
    const base = bases[number % bases.length];
    if (base === undefined) return;
    const done = await oneTry(child, base, seededRandom(seed * 1_000_003 + number), folder, meets);
    during[done.under] = (during[done.under] ?? 0) + 1;
    if (done.unsaid) unsaid += 1;
    if (done.faults.length === 0) survived += 1;
    else problems.push(`try ${number} (${base.name}, during ${done.under}): ${done.faults.join('; ')}`);
  }
  async function worker(): Promise<void> {
    while (tries < least) await oneMore();
  }
  await Promise.all(Array.from({ length: atOnce }, worker));
  for (const kind of meets) for (let more = 0; more < mostMore && !(kind in during); more += 1) await oneMore(kind);
  rmSync(folder, { recursive: true, force: true });
  return { tries, survived, lost: tries - survived, during, unsaid, problems };
}
