import { resolve } from 'node:path';
import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';
import { newFileBeside } from '../keeping/new-file-beside.ts';
import { saveRows } from '../keeping/save-rows.ts';
import type { Kitchen } from '../kitchen.ts';
import { strangeRows } from './strange-rows.ts';

export interface CopiedStrange {
  readonly file: string;
  readonly rows: number;
  /** Rows that could not stand in a kitchen. */
  readonly refused: number;
}

/**
 * Copies from a file that calls itself a kitchen, but does not open as one, whatever could stand in a kitchen: row by row, into a new
 * file beside this kitchen. The strange file and this kitchen stay as they are.
 *
 * Leaves out: history, undo and bin of the file, half-made drafts, photos' files.
 */
export async function copyStrange(kitchen: Kitchen, strange: string): Promise<CopiedStrange> {
  const { found, refused } = strangeRows(resolve(strange));
  if (found.length === 0) {
    throw new Failure('refused', phrase`Nothing in this file could stand in a kitchen. Nothing was copied.`, ['file']);
  }
  const file = newFileBeside(kitchen.file, phrase`copied`, kitchen.now());
  const summary = phrase`Copy what could be read of a strange kitchen`;
  const saved = await saveRows({ file, found, summary, request: 'store:copyStrange', now: kitchen.now });
  return { file, rows: saved.rows, refused: refused + saved.lost };
}
