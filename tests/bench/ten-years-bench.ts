// What a kitchen of ten years costs: each screen's requests, the start, writing and reading against bare SQLite, and a backup beside it.
// Run: npm run bench (all), or node tests/bench/ten-years-bench.ts [trials] [folder]; a kitchen already in that folder is used again.
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, rmSync, statSync } from 'node:fs';
import { cpus, loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { pathToFileURL } from 'node:url';
import { deskOf } from '#desk/desk.ts';
import { type DeskLine, openDeskLine } from '#hosts/desk-line.ts';
import { openKitchen } from '#store/open-kitchen.ts';
import { againstBare } from './against-bare.ts';
import { screens } from './screen-requests.ts';
import { makeTenYears, tenYears } from './ten-years.ts';

const root = join(import.meta.dirname, '..', '..');
const worker = pathToFileURL(join(root, 'electron/desk/desk-worker.ts'));
const rounds = 40;

function percentile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.ceil(sorted.length * share) - 1)] ?? Number.NaN;
}

const ms = (value: number) => `${value.toFixed(value < 10 ? 1 : 0)} ms`;

/** Milliseconds from opening the file to the first answer. */
async function opening(file: string): Promise<number> {
  const start = performance.now();
  const desk = deskOf(await openKitchen(file));
  await desk.handle('kitchen:open', {});
  const took = performance.now() - start;
  desk.close();
  return took;
}

async function medianOpening(file: string): Promise<number> {
  const times: number[] = [];
  for (let round = 0; round < 41; round += 1) times.push(await opening(file));
  return percentile(times, 0.5);
}

/** Milliseconds from starting a program to its first answer, all of Node included. */
function starting(file: string): number {
  const start = performance.now();
  execFileSync(process.execPath, [join(root, 'electron/hosts/headless/main.ts'), 'kitchen:open', '--store', file]);
  return performance.now() - start;
}

function ratioWords(what: string, full_ms: number, empty_ms: number): string {
  const ratio = full_ms / empty_ms;
  return `${what}: ${ms(full_ms)}, empty ${ms(empty_ms)}; ratio ${ratio.toFixed(2)}; aim 1.5: ${ratio <= 1.5 ? 'met' : 'missed'}`;
}

async function printStart(file: string, empty: string): Promise<void> {
  const median = (one: string) =>
    percentile(
      Array.from({ length: 9 }, () => starting(one)),
      0.5,
    );
  console.log(ratioWords('start of the program to its first answer', median(file), median(empty)));
  console.log(ratioWords('opening in a program that runs', await medianOpening(file), await medianOpening(empty)));
}

async function printScreens(file: string): Promise<void> {
  const kitchen = await openKitchen(file);
  const desk = deskOf(kitchen);
  const all = screens(kitchen.read);
  // Once through: what is measured is a workbench at work, not a program that has just begun to run.
  for (const { requests } of all) for (const [name, input] of requests(rounds)) await desk.handle(name, input);
  for (const { screen, requests } of all) {
    const times: number[] = [];
    const worked: number[] = [];
    for (let round = 0; round < rounds; round += 1) {
      const start = performance.now();
      const before = process.cpuUsage();
      for (const [name, input] of requests(round)) {
        const envelope = await desk.handle(name, input);
        if (!envelope.ok) throw new Error(`${name}: ${envelope.error.message}`);
      }
      times.push(performance.now() - start);
      const { user, system } = process.cpuUsage(before);
      worked.push((user + system) / 1000);
    }
    const p95 = percentile(times, 0.95);
    console.log(
      `  ${screen.padEnd(14)} p95 ${ms(p95).padStart(8)}  (${ms(percentile(worked, 0.95))} of processor time)  first ${ms(times[0] ?? 0).padStart(8)}  aim 100 ms: ${p95 <= 100 ? 'met' : 'missed'}`,
    );
  }
  desk.close();
}

async function timed(line: DeskLine, name: string, input: unknown, mark: string): Promise<number> {
  const start = performance.now();
  const envelope = await line.ask({ ask: mark, name, input });
  if (!envelope.ok) throw new Error(`${name}: ${envelope.error.message}`);
  return performance.now() - start;
}

interface Waits {
  readonly reads: readonly number[];
  readonly writes: readonly number[];
}

function waitWords({ reads, writes }: Waits): string {
  const one = (values: readonly number[]) =>
    `${ms(percentile(values, 0.99))} at p99, ${ms(Math.max(...values))} at most`;
  return `reading ${one(reads)}; writing ${one(writes)} (${reads.length} and ${writes.length} asked)`;
}

/** How long a small answer and a small write wait, while a backup of the whole runs and, for as long, while none does. */
async function printStall(file: string): Promise<void> {
  const line = openDeskLine({ worker, store: file });
  await timed(line, 'kitchen:open', {}, 'warm');
  const waits = async (until: () => boolean): Promise<Waits> => {
    const [reads, writes]: [number[], number[]] = [[], []];
    for (let number = 0; !until(); number += 1) {
      reads.push(await timed(line, 'undo:state', {}, `r${number}`));
      if (number % 5 === 0)
        writes.push(await timed(line, 'drafts:keep', { name: 'bench', body: number }, `w${number}`));
      await pause(2);
    }
    return { reads, writes };
  };
  let isOver = false;
  const start = performance.now();
  const backup = timed(line, 'store:backup', {}, 'backup').then(() => {
    isOver = true;
  });
  const busy = await waits(() => isOver);
  await backup;
  const took_ms = performance.now() - start;
  const end = performance.now() + took_ms;
  const quiet = await waits(() => performance.now() > end);
  const longest = Math.max(...busy.reads, ...busy.writes);
  console.log(`backup of the whole, copied, checked and hashed in ${(took_ms / 1000).toFixed(1)} s; waits meanwhile:`);
  console.log(`  beside it  ${waitWords(busy)}; aim 50 ms at most: ${longest <= 50 ? 'met' : 'missed'}`);
  console.log(`  without    ${waitWords(quiet)}`);
  await line.close();
}

async function makeAndSay(file: string, trials: number): Promise<void> {
  const start = performance.now();
  await makeTenYears(file, { ...tenYears, trials });
  const made_s = ((performance.now() - start) / 1000).toFixed(0);
  console.log(
    `a kitchen of ${trials} trials, ${trials * 10} jars, ${trials * 400} scores, ${trials * 4} photos: ${(statSync(file).size / 1e9).toFixed(2)} GB, made in ${made_s} s`,
  );
}

/** Prints it all for a kitchen of so many trials; 5,000 are ten years. With a folder the kitchen is kept there, and used again. */
export async function tenYearsBench(trials = tenYears.trials, keptIn?: string): Promise<void> {
  const folder = keptIn ?? mkdtempSync(join(tmpdir(), 'sidejar-years-'));
  try {
    mkdirSync(folder, { recursive: true });
    // Before anything is made: what this run does itself is none of others' work.
    const load = loadavg()[0] ?? 0;
    const file = join(folder, 'k.sidejar');
    if (existsSync(file)) console.log(`a kitchen kept from before: ${(statSync(file).size / 1e9).toFixed(2)} GB`);
    else await makeAndSay(file, trials);
    console.log(
      `${cpus().length} processors, load ${load.toFixed(1)}${load > cpus().length / 2 ? ': others work here too, and times are longer than they need be' : ''}`,
    );
    const empty = join(folder, 'empty.sidejar');
    (await openKitchen(empty)).close();
    await printStart(file, empty);
    console.log(`screens (all their requests, ${rounds} rounds, another trial, jar, tasting or recipe each time):`);
    await printScreens(file);
    await againstBare(file);
    await printStall(file);
  } finally {
    if (keptIn === undefined) rmSync(folder, { recursive: true, force: true });
  }
}

if (import.meta.main)
  await tenYearsBench(process.argv[2] === undefined ? undefined : Number(process.argv[2]), process.argv[3]);
