import { z } from 'zod';
import { needKinds } from '#core/trial/need.ts';
import { putOffSpans } from '../closed-lists.ts';
import { id, line } from './fields.ts';
import { reads, writes } from './request.ts';

// What the kitchen needs now: worked out from plans and logs, never typed twice.

const zoneMessage = 'a time zone such as Europe/Berlin';
/** Whose days are meant; left out, this machine's. */
const zone = z
  .string()
  .min(1)
  .max(64)
  .refine((name) => {
    try {
      new Intl.DateTimeFormat('en', { timeZone: name });
      return true;
    } catch {
      return false;
    }
  }, zoneMessage)
  .optional();

const one = z.strictObject({ id, name: z.string(), isSample: z.boolean() });

/** Jars of one trial, or one base, culture or tasting, that want the same thing. */
const need = z.strictObject({
  key: z.string(),
  kind: z.enum(needKinds),
  when: z.enum(['overdue', 'today', 'later', 'put-off']),
  /** The earliest moment among them. */
  dueAt: z.string(),
  trial: z.strictObject({ id, question: z.string() }).nullable(),
  jars: z.array(one),
  base: one.nullable(),
  culture: one.nullable(),
  tasting: one.nullable(),
  isSample: z.boolean(),
  /** Where the time comes from when nobody planned it. */
  basis: z.string().nullable(),
  putOff: z.strictObject({ ids: z.array(id), until: z.string(), reason: z.string().nullable() }).nullable(),
});

export const todayRequests = {
  'today:read': reads(
    z.strictObject({ zone }),
    z.strictObject({
      now: z.string(),
      zone: z.string(),
      needs: z.array(need),
      /** Bottles that wait to be tried. */
      bottlesWaiting: z.int(),
    }),
  ),
  /** Puts a need off; what was put off before for the same thing is replaced. */
  'today:putOff': writes(
    z
      .strictObject({
        need: z.enum(needKinds),
        jars: z.array(id).max(96).optional(),
        base: id.optional(),
        culture: id.optional(),
        tasting: id.optional(),
        span: z.enum(putOffSpans),
        zone,
        reason: line(400).optional(),
      })
      .refine(
        ({ jars = [], base, culture, tasting }) =>
          [jars.length > 0, base !== undefined, culture !== undefined, tasting !== undefined].filter(Boolean).length ===
          1,
        { error: 'name jars, a base, a culture or a tasting', path: ['jars'] },
      ),
    z.strictObject({ putOffs: z.array(id), until: z.string() }),
  ),
  'today:wake': writes(z.strictObject({ putOffs: z.array(id).min(1).max(96) }), z.strictObject({ woken: z.int() })),
} as const;
