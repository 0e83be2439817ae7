import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { Reader } from '../reader.ts';
import type { TableName } from '../tables.ts';
import { lastKnown, rowOfText } from './last-known.ts';
import { recordedRow } from './recorded-row.ts';
import { isOfOpenSitting, isVeiled, withoutWhose } from './veil.ts';

type StepRows = Pick<ValueOf<'history:step'>, 'rows' | 'withheld' | 'next'>;

interface Changed {
  readonly id: number;
  readonly table_name: TableName;
  readonly row_id: string;
  readonly before: string | null;
  readonly after: string | null;
  readonly commitment: string | null;
}

function changedRow(read: Reader, changed: Changed): StepRows['rows'][number] | null {
  const { id: change, table_name: table, row_id: id, commitment } = changed;
  const [before, after] = [rowOfText(changed.before), rowOfText(changed.after)];
  const then = after ?? before;
  if (then !== null && isVeiled(read, table, then)) return null;
  const isOpen = then !== null && isOfOpenSitting(read, table, then);
  const isHere = lastKnown(read, table, id)?.isHere ?? false;
  return {
    change,
    row: recordedRow(read, table, id, { row: then, isHere }),
    before: withoutWhose(before, isOpen),
    after: withoutWhose(after, isOpen),
    isErased: commitment !== null,
  };
}

/** What one step changed, row by row in the order of writing: so many behind the change `after`. */
export function stepRows(read: Reader, step: number, after: number, limit: number): StepRows {
  const found = read.all<Changed>(
    `SELECT id, table_name, row_id, before, after, commitment FROM changes
     WHERE step_id = ? AND id > ? ORDER BY id LIMIT ?`,
    step,
    after,
    limit + 1,
  );
  const part = found.slice(0, limit);
  const rows = part.flatMap((changed) => changedRow(read, changed) ?? []);
  return {
    rows,
    withheld: part.length - rows.length,
    next: found.length > limit ? (part.at(-1)?.id ?? null) : null,
  };
}
