import { phrase } from '#core/words/phrase.ts';
import { id as idShape, isLine, isRemark } from '#shared/contract/fields.ts';
import { storedJson } from '#shared/contract/stored-json.ts';
import type { Value } from '../statements.ts';
import { columnNames, type TableName, tables } from '../tables.ts';

const momentShape = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/;

/** Columns with line breaks in them: people's remarks, as the contract takes them. */
const severalLines: ReadonlySet<string> = new Set([
  'note',
  'words',
  'why',
  'asked',
  'went_in',
  'low_word',
  'high_word',
]);

function cellProblem(column: string, kind: string, value: Value | undefined): string | null {
  if (value === undefined || value === null) return kind.endsWith('?') ? null : phrase`${column} is missing`;
  if (kind.startsWith('text')) {
    if (typeof value !== 'string') return phrase`${column} must be words`;
    const mayStand = severalLines.has(column) ? isRemark(value) : isLine(value);
    return mayStand ? null : phrase`${column} holds characters that no screen shows, or that make it read otherwise`;
  }
  if (typeof value !== 'number' || !Number.isFinite(value)) return phrase`${column} must be a number`;
  return kind === 'flag' && value !== 0 && value !== 1 ? phrase`${column} must be 0 or 1` : null;
}

/** Text that a kitchen holds as JSON must have the shape that the screens count on. */
function jsonProblem(table: TableName, row: Readonly<Record<string, Value>>): string | null {
  for (const [column, shape] of Object.entries(storedJson[table] ?? {})) {
    const text = row[column];
    if (text === null || text === undefined) continue;
    try {
      if (!shape.safeParse(JSON.parse(String(text))).success) return phrase`${column} is not of its form`;
    } catch {
      return phrase`${column} is no JSON`;
    }
  }
  return null;
}

/**
 * Why a row from elsewhere can't stand in this kitchen, in a few words; null when it can.
 *
 * Method: every column by its kind, JSON by its shape, id and moment by their form, nothing that the table doesn't have. Ranges are
 * left to the table's own CHECKs.
 */
export function rowProblem(table: TableName, row: Readonly<Record<string, Value>>): string | null {
  const known = new Set(columnNames(table));
  const strange = Object.keys(row).find((column) => !known.has(column));
  if (strange !== undefined) return phrase`there is no “${strange.slice(0, 40)}”`;
  if (!idShape.safeParse(row.id).success) return phrase`id is no id`;
  if (typeof row.revision !== 'number' || !Number.isInteger(row.revision) || row.revision < 1)
    return phrase`revision must be 1 or more`;
  if (row.is_sample !== 0 && row.is_sample !== 1) return phrase`is_sample must be 0 or 1`;
  if (typeof row.created_at !== 'string' || !momentShape.test(row.created_at)) return phrase`created_at is no moment`;
  for (const [column, kind] of Object.entries(tables[table].columns)) {
    const problem = cellProblem(column, kind, row[column]);
    if (problem !== null) return problem;
  }
  return jsonProblem(table, row);
}

/** The row with every column of its table: what an older program did not know is null. */
export function wholeRow(table: TableName, row: Readonly<Record<string, Value>>): Record<string, Value> {
  return Object.fromEntries(columnNames(table).map((column) => [column, row[column] ?? null]));
}
