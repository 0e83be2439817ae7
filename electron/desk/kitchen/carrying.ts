import { readFileSync, statSync } from 'node:fs';
import { resolve } from 'node:path';
import { withPoint } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';
import { firstPart } from '#shared/first-part.ts';
import { carriedText, readCarriedFile } from '#store/carry/carried-file.ts';
import { arrivingPictures, picturesFor } from '#store/carry/carried-pictures.ts';
import { takeIn } from '#store/carry/take-in.ts';
import { trialRows } from '#store/carry/trial-rows.ts';
import { schemaOf, writeExport } from '#store/carry/write-export.ts';
import type { Kitchen } from '#store/kitchen.ts';
import type { Row } from '#store/tables.ts';
import { findingsText } from '../findings/findings-text.ts';
import { found } from '../found.ts';
import type { Handlers } from '../handler.ts';

/** What one text can hold in memory with room for its rows. */
const largestFile_bytes = 400 * 1024 * 1024;

function textOfFile(file: string): string {
  const place = resolve(file);
  let bytes: number;
  try {
    const about = statSync(place);
    if (!about.isFile()) throw new Error('no file');
    bytes = about.size;
  } catch {
    throw new Failure('not-found', phrase`There is no such file on this machine.`, ['file']);
  }
  if (bytes > largestFile_bytes) {
    throw new Failure('too-large', phrase`This file is larger than 400 MB; it can’t be taken in as a whole.`, ['file']);
  }
  return readFileSync(place, 'utf8');
}

function kitchenName(kitchen: Kitchen): string {
  return kitchen.read.one<{ name: string }>('SELECT name FROM kitchens')?.name ?? '';
}

/** Letters and digits of any script, single hyphens between; never a path. */
export function fileStem(words: string): string {
  const stem = words
    .normalize('NFC')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60);
  return stem === '' ? 'trial' : stem.toLowerCase();
}

export const carryingHandlers: Handlers<'data:export' | 'data:trialFile' | 'data:takeIn' | 'findings:text'> = {
  'data:export': (kitchen, { to }, watch) => writeExport(kitchen, to, watch),
  'data:trialFile'(kitchen, { trial }) {
    const row = found(kitchen.read.row('trials', trial), 'trial', 'trial');
    const { rows, left } = trialRows(kitchen.read, trial);
    const { pictures, left: picturesLeft } = picturesFor(kitchen.file, (rows.get('photos') ?? []) as Row<'photos'>[]);
    const about = { from: kitchenName(kitchen), holds: 'trial', schema: schemaOf(kitchen), pictures } as const;
    const text = [...carriedText(about, (table) => rows.get(table) ?? [])].join('');
    const isOpen = [...(rows.get('tastings') ?? []), ...(rows.get('discriminations') ?? [])].some(
      ({ closed_at }) => closed_at === null,
    );
    return {
      name: `${fileStem(row.question)}.sidejar-trial`,
      text,
      rows: [...rows.values()].reduce((sum, own) => sum + own.length, 0),
      left: [...left],
      pictures: pictures.size,
      picturesLeft,
      tellsCodes: isOpen,
    };
  },
  'data:takeIn'(kitchen, { text, file, preview }, watch) {
    const carried = readCarriedFile(text ?? textOfFile(file ?? ''), schemaOf(kitchen));
    const plan = takeIn(kitchen.read, carried, () => watch.assertGoing());
    const pictures = arrivingPictures(carried, file === undefined ? null : resolve(file));
    const told = {
      from: carried.from,
      holds: carried.holds,
      fresh: [...plan.fresh],
      same: plan.same,
      kept: plan.kept.slice(0, 1000),
      renamed: [...plan.renamed],
      pictures: pictures.count,
    };
    if (preview || plan.fresh.length === 0) return { ...told, taken: false };
    kitchen.assertThere();
    pictures.keep(kitchen.file);
    const what = carried.holds === 'trial' ? phrase`a trial` : phrase`a kitchen`;
    kitchen.write(
      { request: 'data:takeIn', summary: phrase`Take in ${what} from “${firstPart(carried.from, 100)}”` },
      (writer) => {
        // Looked at again inside the transaction: another window may have written between.
        takeIn(writer, carried, () => watch.assertGoing()).write(writer, (done, total) => {
          watch.assertGoing();
          watch.progress(done, total);
        });
      },
    );
    return { ...told, taken: true };
  },
  async 'findings:text'(kitchen, { trial }, watch) {
    const row = found(kitchen.read.row('trials', trial), 'trial', 'trial');
    return { name: `${fileStem(row.question)}.md`, text: await withPoint(() => findingsText(kitchen, trial, watch)) };
  },
};
