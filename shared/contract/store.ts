import { z } from 'zod';
import { id, line, name, place } from './fields.ts';
import { reads, writes } from './request.ts';

// The kitchen's file itself: what it is, whether it is whole, its backups, undo and bin.

/** Looks no deeper than it allows: an endless nest must not exhaust whoever reads it. */
function isShallowJson(value: unknown, depth = 40): boolean {
  if (value === null || ['string', 'boolean'].includes(typeof value)) return true;
  if (typeof value === 'number') return Number.isFinite(value);
  if (typeof value !== 'object' || depth === 0) return false;
  return Object.values(value).every((inner) => isShallowJson(inner, depth - 1));
}

const backup = z.strictObject({ file: z.string(), bytes: z.int(), sha256: z.string() });

const stepSummary = z.strictObject({ step: z.int(), summary: z.string() });

export const storeRequests = {
  'kitchen:open': reads(
    z.strictObject({}),
    z.strictObject({
      name: z.string(),
      measures: z.enum(['metric', 'us']),
      /** How prices are written, such as € or USD; null until somebody says. */
      currency: z.string().nullable(),
      file: z.string(),
      readOnly: z.boolean(),
      sampleRows: z.int(),
      counts: z.record(z.string(), z.int()),
    }),
  ),
  'kitchen:change': writes(
    z.strictObject({
      name: name.optional(),
      measures: z.enum(['metric', 'us']).optional(),
      currency: line(12)
        .regex(/^[^\d\p{Cc}]+$/u, 'a word or sign without figures')
        .nullable()
        .optional(),
    }),
    z.strictObject({ name: z.string(), measures: z.enum(['metric', 'us']), currency: z.string().nullable() }),
  ),
  /** Fills an empty kitchen with an invented example, marked as sample everywhere. */
  'kitchen:sample': writes(z.strictObject({}), z.strictObject({ rows: z.int() }), { long: true }),
  'kitchen:removeSample': writes(z.strictObject({}), z.strictObject({ rows: z.int() })),
  /** What a report of a fault needs: versions, counts and the program's own mistakes; nothing that a person wrote. */
  'report:read': reads(z.strictObject({}), z.strictObject({ text: z.string() })),
  /** A half-made plan or sheet as it was left; null when there is none. */
  'drafts:open': reads(
    z.strictObject({ name }),
    z.strictObject({ draft: z.strictObject({ body: z.json(), keptAt: z.string() }).nullable() }),
  ),
  /** Keeps a half-made thing under its name, outside history and undo; null forgets it. */
  'drafts:keep': writes(
    z.strictObject({
      name,
      body: z
        .unknown()
        .refine((body) => isShallowJson(body), { error: 'a draft is JSON of at most 40 levels', abort: true })
        .refine((body) => JSON.stringify(body).length <= 200_000, 'a draft may have up to 200,000 characters'),
    }),
    z.strictObject({ kept: z.boolean() }),
  ),
  'store:check': reads(z.strictObject({}), z.strictObject({ ok: z.boolean(), problems: z.array(z.string()) }), {
    long: true,
  }),
  'store:backup': reads(z.strictObject({ to: place.optional() }), backup, { long: true }),
  /** What the program does by itself at each start and daily: a backup when due, fewer old ones, the bin rid of what is old. */
  'store:tend': writes(
    z.strictObject({}),
    z.strictObject({ backup: backup.nullable(), thinned: z.int(), emptied: z.int() }),
    { long: true },
  ),
  /** Saves what can be read of a damaged kitchen into a new file. */
  'store:rescue': reads(
    z.strictObject({ to: place.optional() }),
    z.strictObject({ file: z.string(), rows: z.int(), fromLog: z.int(), lost: z.int() }),
    { long: true },
  ),
  /** Copies what can be read of a file that does not open as a kitchen, row by row, into a new one beside this. `refused`: rows that could not stand in it. */
  'store:copyStrange': reads(
    z.strictObject({ file: place }),
    z.strictObject({ file: z.string(), rows: z.int(), refused: z.int() }),
    { long: true },
  ),
  /** `due`: something changed since the newest. `copies`: files beside the kitchen that look like a second edition of it. */
  'backups:list': reads(
    z.strictObject({}),
    z.strictObject({
      folder: z.string(),
      due: z.boolean(),
      copies: z.array(z.string()),
      backups: z.array(
        z.strictObject({
          name: z.string(),
          kind: z.enum(['kept', 'made', 'before-update']),
          at: z.string(),
          bytes: z.int(),
        }),
      ),
    }),
  ),
  /** Makes a new kitchen beside this one from a backup; both stay as they are. */
  'backups:restore': reads(
    z.strictObject({ name: z.string().min(1).max(1000) }),
    z.strictObject({ file: z.string(), bytes: z.int() }),
    { long: true },
  ),
  /**
   * Opens a kitchen that lies beside this one, such as one restored from a backup: in a window of its own where the host has windows,
   * else in this one's place. Both stay as they are.
   */
  'kitchen:openBeside': reads(
    z.strictObject({
      name: z
        .string()
        .min(1)
        .max(400)
        .regex(/^[^\\/\0]+\.sidejar$/, 'the name of a kitchen beside this one'),
    }),
    z.strictObject({ file: z.string() }),
  ),
  /** Erases a taster for good: name, note, remarks. The scores stay, nameless. `backups`: copies that still hold the name. */
  'tasters:erase': writes(
    z.strictObject({ taster: id }),
    z.strictObject({ taster: id, name: z.string(), entries: z.int(), backups: z.int() }),
    { long: true },
  ),
  'undo:state': reads(
    z.strictObject({}),
    z.strictObject({
      undo: z.string().nullable(),
      undoRefused: z.string().nullable(),
      /** The step that undo would take back, and the request that made it. */
      undoStep: z.strictObject({ step: z.int(), request: z.string() }).nullable(),
      redo: z.string().nullable(),
    }),
  ),
  /** With a step, that one alone: refused where something else was done since. */
  'undo:last': writes(z.strictObject({ step: z.int().min(1).optional() }), stepSummary),
  'redo:last': writes(z.strictObject({}), stepSummary),
  'bin:list': reads(
    z.strictObject({}),
    z.strictObject({
      entries: z.array(z.strictObject({ step: z.int(), at: z.string(), summary: z.string(), rows: z.int() })),
    }),
  ),
  /** Erases for good what one step removed. */
  'bin:empty': writes(z.strictObject({ step: z.int().min(1) }), z.strictObject({ rows: z.int() })),
  'bin:restore': writes(z.strictObject({ step: z.int().min(1) }), z.strictObject({ rows: z.int() })),
} as const;
