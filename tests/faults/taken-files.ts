import { chmodSync, copyFileSync, mkdtempSync, readFileSync, renameSync, rmSync, unlinkSync } from 'node:fs';
import { join } from 'node:path';
import { seededRandom } from '#core/numeric/seeded-random.ts';
import { type Desk, deskOf } from '#desk/desk.ts';
import { checkStore } from '#store/keeping/check-store.ts';
import { openKitchen } from '#store/open-kitchen.ts';
import { sqliteDriver } from '#store/sqlite-driver.ts';
import type { BaseKitchen } from './base-kitchens.ts';
import { type FaultRow, type NotTried, tally } from './fault-row.ts';

function copyOf(base: BaseKitchen): { folder: string; file: string } {
  const folder = mkdtempSync(join(base.folder, 'taken-'));
  const file = join(folder, 'k.sidejar');
  copyFileSync(base.file, file);
  return { folder, file };
}

async function code(desk: Desk, name: string, input: unknown): Promise<string> {
  const envelope = await desk.handle(name, input);
  return envelope.ok ? 'ok' : envelope.error.code;
}

const takings: readonly ((file: string) => void)[] = [
  (file) => renameSync(file, `${file}.away`),
  (file) => unlinkSync(file),
  (file) => {
    copyFileSync(file, `${file}.other`);
    renameSync(`${file}.other`, file);
  },
  (file) => unlinkSync(`${file}-wal`),
];

/** The file is moved, deleted or replaced while the program has it open, after a random number of writes. */
export async function takenFile(base: BaseKitchen, tries: number, seed: number): Promise<FaultRow> {
  const random = seededRandom(seed);
  const one = async (number: number): Promise<string[]> => {
    const { folder, file } = copyOf(base);
    const kitchen = await openKitchen(file);
    const desk = deskOf(kitchen);
    const writes = 1 + random.below(12);
    for (let at = 0; at < writes; at += 1) await desk.handle('tasters:save', { name: `Taken ${at}` });
    takings[number % takings.length]?.(file);
    const problems: string[] = [];
    const said = await code(desk, 'tasters:save', { name: 'Too late' });
    if (said !== 'store-missing') problems.push(`writing said ${said}`);
    const to = join(folder, 'saved.sidejar');
    if ((await code(desk, 'store:backup', { to })) !== 'ok') problems.push('what was still held could not be saved');
    desk.close();
    const saved = await openKitchen(to);
    const there = saved.read.one<{ n: number }>("SELECT count(*) AS n FROM tasters WHERE name GLOB 'Taken *'")?.n;
    if (there !== writes) problems.push(`${writes} acknowledged, ${there} saved`);
    problems.push(...checkStore(saved, () => {}));
    saved.close();
    rmSync(folder, { recursive: true, force: true });
    return problems;
  };
  return tally(
    'file moved, deleted, replaced, or its log deleted, while open',
    tries,
    one,
    'writing is refused, a backup elsewhere holds every acknowledged write',
  );
}

/** Another program holds the file locked: shorter than the program waits, or longer. */
export async function lockedFile(base: BaseKitchen, tries: number, seed: number): Promise<FaultRow> {
  const random = seededRandom(seed);
  const Database = sqliteDriver();
  const one = async (number: number): Promise<string[]> => {
    const { folder, file } = copyOf(base);
    const problems: string[] = [];
    const kitchen = await openKitchen(file, { patience_ms: 20 + random.below(60) });
    const desk = deskOf(kitchen);
    const other = new Database(file);
    other.exec('BEGIN IMMEDIATE');
    const said = await code(desk, 'tasters:save', { name: `Locked ${number}` });
    if (said !== 'store-locked') problems.push(`writing said ${said}`);
    if ((await code(desk, 'tasters:list', {})) !== 'ok') problems.push('reading was refused too');
    other.exec('ROLLBACK');
    other.close();
    const after = await code(desk, 'tasters:save', { name: `Locked ${number}` });
    if (after !== 'ok') problems.push(`unlocked, writing said ${after}`);
    problems.push(...checkStore(kitchen, () => {}));
    desk.close();
    rmSync(folder, { recursive: true, force: true });
    return problems;
  };
  return tally(
    'file locked by another program',
    tries,
    one,
    'waits, then says so; reads go on; writes once it is free',
  );
}

/** As somebody for whom permissions count: an administrator's rights are put down for the while. */
async function asNobody<Result>(work: () => Promise<Result>): Promise<Result> {
  const isRoot = process.getuid?.() === 0;
  if (isRoot) process.seteuid?.(65_534);
  try {
    return await work();
  } finally {
    if (isRoot) process.seteuid?.(0);
  }
}

/** A folder and a file where nothing may be written. */
export async function readOnlyFolder(base: BaseKitchen, tries: number): Promise<FaultRow | NotTried> {
  const fault = 'read-only file and folder';
  if (process.platform === 'win32') return { fault, because: 'folders on Windows have no such mark' };
  const isRoot = process.getuid?.() === 0;
  chmodSync(base.folder, 0o755);
  const one = async (): Promise<string[]> => {
    const { folder, file } = copyOf(base);
    const before = readFileSync(file);
    chmodSync(file, 0o444);
    chmodSync(folder, 0o555);
    const problems = await asNobody(async () => {
      const desk = deskOf(await openKitchen(file));
      const found: string[] = [];
      if ((await code(desk, 'trials:list', {})) !== 'ok') found.push('reading was refused');
      const said = await code(desk, 'tasters:save', { name: 'Nobody' });
      if (said !== 'store-read-only') found.push(`writing said ${said}`);
      desk.close();
      return found;
    });
    if (!readFileSync(file).equals(before)) problems.push('the file was written to');
    chmodSync(folder, 0o755);
    rmSync(folder, { recursive: true, force: true });
    return problems;
  };
  return tally(fault, tries, one, isRoot ? 'as user 65534 (permissions do not bind root)' : 'as an ordinary user');
}
