import { phrase } from '#core/words/phrase.ts';
import type { PastedTable } from './pasted-table.ts';

/** The columns of a pasted table that hold something and have no heading: what they hold can't be told, so they are left out. */
export function unnamedColumns({ header, rows }: Pick<PastedTable, 'header' | 'rows'>): {
  row: number;
  code: string;
  message: string;
}[] {
  return header.flatMap((head, at) => {
    if (head.trim() !== '' || rows.every((cells) => (cells[at] ?? '').trim() === '')) return [];
    return [{ row: 1, code: 'no-heading', message: phrase`Column ${at + 1} has no heading and is left out.` }];
  });
}
