import { copyFileSync, cpSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { seededRandom } from '#core/numeric/seeded-random.ts';
import { deskOf } from '#desk/desk.ts';
import { checkStore } from '#store/keeping/check-store.ts';
import { openKitchen } from '#store/open-kitchen.ts';
import { photoFolder } from '#store/photo-files.ts';
import type { BaseKitchen } from './base-kitchens.ts';
import { type FaultRow, tally } from './fault-row.ts';
import { actName, actsInRound, doAct, newKnown } from './scripted-acts.ts';

// SQLite's write-ahead log: a header of 32 bytes, then frames of 24 bytes and a page. Source: the SQLite file format, section 4.1.
const logHeader = 32;
const frame = 24 + 4096;

interface Mark {
  readonly bytes: number;
  readonly head: string;
}

interface Recorded {
  readonly main: Buffer;
  readonly log: Buffer;
  /** How long the log was after each acknowledged write, and the head of the chain then. */
  readonly marks: readonly Mark[];
  /** The folder of its photos, each kept by the disk before its row was written. */
  readonly photos: string;
}

async function record(base: BaseKitchen): Promise<Recorded> {
  const folder = mkdtempSync(join(base.folder, 'record-'));
  const file = join(folder, 'k.sidejar');
  copyFileSync(base.file, file);
  let time = Date.parse('2026-05-05T08:00:00.000Z');
  const clock = () => {
    time += 1000;
    return new Date(time);
  };
  const kitchen = await openKitchen(file, { clock });
  kitchen.db.pragma('wal_autocheckpoint = 0');
  const head = () =>
    kitchen.read.one<{ hash: string }>('SELECT hash FROM changes ORDER BY id DESC LIMIT 1')?.hash ?? '';
  const sizeNow = () => statSync(`${file}-wal`, { throwIfNoEntry: false })?.size ?? 0;
  const main = readFileSync(file);
  const marks: Mark[] = [{ bytes: sizeNow(), head: head() }];
  const desk = deskOf(kitchen);
  const known = newKnown();
  for (let act = 0; act < actsInRound; act += 1) {
    // Erasing writes the whole file anew and empties the log: nothing could be cut after it.
    if (actName(act) === 'tasters:erase') break;
    await doAct(desk, known, act);
    marks.push({ bytes: sizeNow(), head: head() });
  }
  const log = readFileSync(`${file}-wal`);
  desk.close();
  return { main, log, marks, photos: photoFolder(file) };
}

/**
 * Cuts the log of a scripted run after each frame and inside each, as a power cut may, and opens what is left: it must be the state
 * after the last write whose frames are all there.
 *
 * @param every take only every so manieth frame
 */
export async function cutLog(base: BaseKitchen, seed: number, every = 1): Promise<FaultRow> {
  const { main, log, marks, photos } = await record(base);
  const random = seededRandom(seed);
  const frames = (log.length - logHeader) / frame;
  const cuts: number[] = [];
  for (let at = 0; at < frames; at += every) {
    const start = logHeader + at * frame;
    cuts.push(start, start + 1 + random.below(frame - 1));
  }
  cuts.push(log.length, random.below(logHeader));
  const folder = mkdtempSync(join(base.folder, 'cut-'));
  const one = async (number: number): Promise<string[]> => {
    const cut = cuts[number] ?? 0;
    const file = join(folder, `k${number}.sidejar`);
    writeFileSync(file, main);
    writeFileSync(`${file}-wal`, log.subarray(0, cut));
    cpSync(photos, photoFolder(file), { recursive: true });
    const expected = marks.findLast(({ bytes }) => bytes <= cut) ?? marks[0];
    const kitchen = await openKitchen(file);
    const problems = checkStore(kitchen, () => {});
    const head = kitchen.read.one<{ hash: string }>('SELECT hash FROM changes ORDER BY id DESC LIMIT 1')?.hash;
    if (head !== expected?.head) problems.push(`cut at byte ${cut}: not the state after the last whole write`);
    kitchen.close();
    for (const end of ['', '-wal', '-shm', '.photos']) rmSync(`${file}${end}`, { force: true, recursive: true });
    return problems;
  };
  const row = await tally(
    'log cut, at each frame and inside it',
    cuts.length,
    one,
    `${marks.length - 1} writes, ${frames} frames of 4 KiB`,
  );
  rmSync(folder, { recursive: true, force: true });
  return row;
}
