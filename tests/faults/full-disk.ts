import { spawnSync } from 'node:child_process';
import { copyFileSync, existsSync, mkdtempSync, readdirSync, rmSync, statfsSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { seededRandom } from '#core/numeric/seeded-random.ts';
import { deskOf } from '#desk/desk.ts';
import { checkStore } from '#store/keeping/check-store.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { openKitchen } from '#store/open-kitchen.ts';
import type { BaseKitchen } from './base-kitchens.ts';
import { type FaultRow, type NotTried, tally } from './fault-row.ts';

const note = 'n'.repeat(3900);

/** Writes until the store says that it is full; what is wrong with how it said so, and how many writes it had acknowledged. */
async function writeUntilFull(kitchen: Kitchen, mark: string): Promise<{ problems: string[]; acknowledged: number }> {
  const desk = deskOf(kitchen);
  for (let number = 0; number < 5000; number += 1) {
    const envelope = await desk.handle('tasters:save', { name: `${mark} ${number}`, note });
    if (envelope.ok) continue;
    const problems =
      envelope.error.code === 'store-full' ? [] : [`said ${envelope.error.code}: ${envelope.error.message}`];
    return { problems, acknowledged: number };
  }
  return { problems: ['was never full'], acknowledged: 5000 };
}

function standing(kitchen: Kitchen, mark: string): number {
  return kitchen.read.one<{ n: number }>('SELECT count(*) AS n FROM tasters WHERE name GLOB ?', `${mark} *`)?.n ?? 0;
}

/** All that was acknowledged is there, nothing more, and the whole kitchen agrees with its log. */
function lookThrough(kitchen: Kitchen, mark: string, acknowledged: number): string[] {
  const found = standing(kitchen, mark);
  const problems = checkStore(kitchen, () => {});
  return found === acknowledged ? problems : [...problems, `${acknowledged} acknowledged, ${found} there`];
}

/** SQLite's own limit on the pages of a file: a full disk as SQLite sees it, wherever this runs. */
export async function fullByPages(base: BaseKitchen, tries: number, seed: number): Promise<FaultRow> {
  const random = seededRandom(seed);
  const one = async (number: number): Promise<string[]> => {
    const file = join(base.folder, `full-${number}.sidejar`);
    copyFileSync(base.file, file);
    const kitchen = await openKitchen(file);
    const pages = Number(kitchen.db.pragma('page_count', { simple: true }));
    kitchen.db.pragma(`max_page_count = ${pages + random.below(60)}`);
    const { problems, acknowledged } = await writeUntilFull(kitchen, 'Full');
    problems.push(...lookThrough(kitchen, 'Full', acknowledged));
    kitchen.db.pragma('max_page_count = 4294967294');
    const after = await deskOf(kitchen).handle('tasters:save', { name: 'Room again' });
    if (!after.ok) problems.push('with room again it still refused');
    kitchen.close();
    for (const end of ['', '-wal', '-shm']) rmSync(`${file}${end}`, { force: true });
    return problems;
  };
  return tally(
    'disk full, by SQLite’s page limit',
    tries,
    one,
    'max_page_count; writes until refused, then with room again',
  );
}

/** A file system of its own with a few megabytes, in memory; null where mounting is not permitted. */
export function smallDisk(megabytes = 6): { folder: string; remove(): void } | null {
  if (process.platform !== 'linux') return null;
  const folder = mkdtempSync(join(tmpdir(), 'sidejar-disk-'));
  const mounted = spawnSync('mount', ['-t', 'tmpfs', '-o', `size=${megabytes}m,mode=0777`, 'tmpfs', folder]);
  if (mounted.status !== 0) {
    rmSync(folder, { recursive: true, force: true });
    return null;
  }
  return {
    folder,
    remove() {
      spawnSync('umount', [folder]);
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** A disk that really is full: a small file system in memory, filled up to a random rest. */
export async function fullDisk(base: BaseKitchen, tries: number, seed: number): Promise<FaultRow | NotTried> {
  const fault = 'disk full, on a small disk in memory';
  const disk = smallDisk();
  if (disk === null) return { fault, because: 'mounting a tmpfs is not permitted here (it needs Linux and root)' };
  const random = seededRandom(seed);
  const one = async (number: number): Promise<string[]> => {
    for (const name of readdirSync(disk.folder)) rmSync(join(disk.folder, name), { recursive: true, force: true });
    const file = join(disk.folder, 'k.sidejar');
    copyFileSync(base.file, file);
    const kitchen = await openKitchen(file);
    await deskOf(kitchen).handle('kitchen:change', { name: `Before ${number}` });
    const { bavail, bsize } = statfsSync(disk.folder);
    const rest = random.below(400_000);
    writeFileSync(join(disk.folder, 'filler'), Buffer.alloc(Math.max(0, bavail * bsize - rest), 1));
    const { problems, acknowledged } = await writeUntilFull(kitchen, 'Full');
    problems.push(...lookThrough(kitchen, 'Full', acknowledged));
    const backup = await deskOf(kitchen).handle('store:backup', {});
    if (backup.ok) problems.push('a backup was made on a full disk');
    const backups = join(disk.folder, 'backups');
    if (existsSync(backups) && readdirSync(backups).length > 0) problems.push('half a backup was left');
    kitchen.close();
    const again = await openKitchen(file);
    problems.push(...lookThrough(again, 'Full', acknowledged));
    rmSync(join(disk.folder, 'filler'));
    const after = await deskOf(again).handle('tasters:save', { name: 'Room again' });
    if (!after.ok) problems.push('with room again it still refused');
    again.close();
    return problems;
  };
  try {
    return await tally(
      fault,
      tries,
      one,
      'tmpfs of 6 MB; writes and a backup until refused, opened again full, then with room',
    );
  } finally {
    disk.remove();
  }
}
