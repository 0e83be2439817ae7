import { z } from 'zod';
import { recordedTables } from '../recorded-tables.ts';
import { count, id } from './fields.ts';
import { reads } from './request.ts';

// What was ever done: step by step, row by row, and the way from one to the other.

const table = z.enum(recordedTables);
/** A row as the log wrote it, by its columns. */
const storedRow = z.record(z.string(), z.union([z.string(), z.number(), z.null()]));
const stepKind = z.enum(['do', 'undo', 'redo']);

const namedRow = {
  table,
  id,
  /** What it was called last: a label, a question, a word of a closed list; empty where it has no name or was erased. */
  name: z.string(),
  /** When it was taken, seen, made or held. */
  at: z.string().nullable(),
};

/** A row as a person would speak of it: standing, lying in the bin, or known from the log alone. */
export const recordedRow = z.strictObject({
  ...namedRow,
  /** What else tells it from its like: whose it is, of which sample. Kept back while its tasting is open. */
  also: z.array(z.string()),
  isHere: z.boolean(),
  /** What it is part of, from the nearest outwards. */
  of: z.array(z.strictObject(namedRow)),
});

const change = { before: storedRow.nullable(), after: storedRow.nullable(), isErased: z.boolean() };
const step = { step: z.int(), at: z.string(), request: z.string(), summary: z.string(), kind: stepKind };

export const historyRequests = {
  'history:read': reads(
    z.strictObject({ limit: count(1, 500).default(50), before: z.int().min(1).optional() }),
    z.strictObject({ steps: z.array(z.strictObject({ ...step, rows: z.int() })) }),
  ),
  /**
   * The rows that one step changed, in the order of writing. `withheld`: rows of this part that would tell which jar is behind a code of a
   * tasting still open. `after`: those behind the change of that number; `next` is the last one's, null when none follows.
   */
  'history:step': reads(
    z.strictObject({ step: z.int().min(1), limit: count(1, 500).default(40), after: z.int().min(0).default(0) }),
    z.strictObject({
      ...step,
      total: z.int(),
      rows: z.array(z.strictObject({ change: z.int(), row: recordedRow, ...change })),
      withheld: z.int(),
      next: z.int().nullable(),
    }),
  ),
  /** Everything that ever happened to one row, the newest first. */
  'history:row': reads(
    z.strictObject({ table, id, limit: count(1, 500).default(100) }),
    z.strictObject({
      entries: z.array(
        z.strictObject({
          step: z.int(),
          at: z.string(),
          summary: z.string(),
          kind: stepKind,
          ...change,
          /** Its step was undone, and not done again since. */
          isUndone: z.boolean(),
        }),
      ),
    }),
  ),
  /** What a row is, and how many rows of which tables are part of it now. `isVeiled`: its past is told once its tasting is revealed. */
  'history:about': reads(
    z.strictObject({ table, id }),
    z.strictObject({
      row: recordedRow.nullable(),
      isVeiled: z.boolean(),
      parts: z.array(z.strictObject({ table, rows: z.int() })),
    }),
  ),
  /** The rows of one table that are part of a row, the newest first; those of an open tasting that must stay blind are left out. */
  'history:parts': reads(
    z.strictObject({ table, id, part: table, limit: count(1, 500).default(40), after: id.optional() }),
    z.strictObject({ rows: z.array(recordedRow), more: z.boolean() }),
  ),
} as const;
