import type { Reader } from './reader.ts';
import type { Value } from './statements.ts';

/** Which part of a long list, the newest first, is wanted. */
export interface Part {
  /** At most so many; all when left out. */
  readonly limit?: number | undefined;
  /** Those behind the row with this moment and id. */
  readonly after?: { readonly at: string; readonly id: string } | undefined;
}

export interface ListPart<Found> {
  readonly rows: Found[];
  /** Whether more of the list follows. */
  readonly more: boolean;
}

interface Whole {
  /** A SELECT whose table is named `t`, without WHERE. */
  readonly select: string;
  /** The column of moments that the list is ordered by; an index over it and `id` keeps the part cheap. */
  readonly at: string;
  readonly where?: string;
  readonly values?: readonly Value[];
}

/** Reads a part of a list, and one row more to know whether it goes on. */
export function partOf<Found>(
  read: Reader,
  { select, at, where, values = [] }: Whole,
  { limit, after }: Part,
): ListPart<Found> {
  const conditions = [
    ...(where === undefined ? [] : [where]),
    ...(after === undefined ? [] : [`(t.${at}, t.id) < (?, ?)`]),
  ];
  const filter = conditions.length === 0 ? '' : `WHERE ${conditions.join(' AND ')}`;
  const sql = `${select} ${filter} ORDER BY t.${at} DESC, t.id DESC ${limit === undefined ? '' : 'LIMIT ?'}`;
  const rows = read.all<Found>(
    sql,
    ...values,
    ...(after === undefined ? [] : [after.at, after.id]),
    ...(limit === undefined ? [] : [limit + 1]),
  );
  return { rows: rows.slice(0, limit), more: limit !== undefined && rows.length > limit };
}
