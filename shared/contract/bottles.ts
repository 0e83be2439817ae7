import { z } from 'zod';
import { vesselKinds } from '#core/ferment/jar-input.ts';
import { pours } from '../closed-lists.ts';
import { caution } from './ferment.ts';
import { count, id, line, moment, note, sugar_g_per_L } from './fields.ts';
import { reads, writes } from './request.ts';

// Bottles: filled from a jar or a batch, chilled, opened one by one.

/** The vessels of the contract that close. */
export const closure = z.enum(vesselKinds).exclude(['open-jar']);

const opening = z.strictObject({
  id,
  openedAt: z.string(),
  pour: z.enum(pours),
  note: z.string().nullable(),
});

export const bottling = z.strictObject({
  id,
  revision: z.int(),
  isSample: z.boolean(),
  /** What it was filled from, and where that stands. */
  from: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('jar'), jar: id, label: z.string(), trial: id, question: z.string() }),
    z.strictObject({ kind: z.literal('batch'), batch: id, recipe: id, name: z.string(), version: z.int() }),
  ]),
  bottledAt: z.string(),
  count: z.int(),
  size_mL: z.number(),
  closure,
  ratedGauge_bar: z.number().nullable(),
  lot: z.string().nullable(),
  sugar_g_per_L: z.number().nullable(),
  chilledAt: z.string().nullable(),
  note: z.string().nullable(),
  openings: z.array(opening),
  /** Bottles not opened yet. */
  left: z.int(),
  /** The most the sugar left can make; null where the sugar at closing is not known. */
  gauge_bar: z.strictObject({ ambient: z.number(), at35: z.number() }).nullable(),
  cautions: z.array(caution),
});

const owner = { jar: id.optional(), batch: id.optional() };

export const bottleRequests = {
  'bottles:list': reads(z.strictObject(owner), z.strictObject({ bottlings: z.array(bottling) })),
  'bottles:fill': writes(
    z
      .strictObject({
        ...owner,
        at: moment.optional(),
        count: count(1, 10_000),
        size_mL: z.number().min(1).max(1_000_000),
        closure,
        ratedGauge_bar: z.number().positive().max(100).optional(),
        lot: line(60).optional(),
        sugar_g_per_L: sugar_g_per_L.optional(),
        note: note.optional(),
      })
      .refine(({ jar, batch }) => (jar === undefined) !== (batch === undefined), {
        error: 'name either the jar or the batch',
        path: ['jar'],
      }),
    z.strictObject({ bottling: id }),
  ),
  'bottles:chill': writes(z.strictObject({ bottling: id, at: moment.optional() }), z.strictObject({ bottling: id })),
  'bottles:open': writes(
    z.strictObject({ bottling: id, pour: z.enum(pours), at: moment.optional(), note: note.optional() }),
    z.strictObject({ opening: id, left: z.int() }),
  ),
  'bottles:remove': writes(z.strictObject({ bottling: id }), z.strictObject({ bottling: id })),
} as const;
