import { z } from 'zod';
import { id, line } from './fields.ts';
import { reads, writes } from './request.ts';

// What the maker wants of the drink, said before the tasting, and which jar comes closest to it.

const wish = z
  .strictObject({
    attribute: line(100),
    goal: z.enum(['more', 'less', 'target']),
    low: z.number().min(-1000).max(1000),
    high: z.number().min(-1000).max(1000),
    target: z.number().min(-1000).max(1000).optional(),
    importance: z.number().min(0.01).max(100).default(1),
  })
  .refine(({ low, high }) => low < high, { error: 'the lower end must lie below the upper end', path: ['high'] })
  .refine(({ goal, target }) => (goal === 'target') === (target !== undefined), {
    error: 'give a target exactly when the goal is a target',
    path: ['target'],
  })
  .refine(({ low, high, target }) => target === undefined || (target > low && target < high), {
    error: 'the target must lie between the ends',
    path: ['target'],
  });

export const profileRequests = {
  /** What is wanted of a trial's drink; `setAfterReveal` when it was said or changed after codes had been seen. */
  'profiles:open': reads(
    z.strictObject({ trial: id }),
    z.strictObject({
      wishes: z.array(
        z.strictObject({
          attribute: z.string(),
          goal: z.enum(['more', 'less', 'target']),
          low: z.number(),
          high: z.number(),
          target: z.number().nullable(),
          importance: z.number(),
        }),
      ),
      /** What can be wished for, with the ends of its scale. */
      attributes: z.array(z.strictObject({ name: z.string(), low: z.number(), high: z.number() })),
      closedTastings: z.int(),
      setAfterReveal: z.boolean(),
    }),
  ),
  'profiles:save': writes(
    z.strictObject({
      trial: id,
      wishes: z
        .array(wish)
        .max(40)
        .refine(
          (all) => new Set(all.map(({ attribute }) => attribute)).size === all.length,
          'each attribute may stand once',
        ),
    }),
    z.strictObject({ wishes: z.int() }),
  ),
  /** Which level comes closest to the profile, and how often it would win if the panel were drawn again. */
  'profiles:judge': reads(
    z.strictObject({
      trial: id,
      draws: z.int().min(100).max(20_000).default(2000),
      seed: z.int().min(0).max(4_294_967_295).default(1),
    }),
    z.strictObject({
      levels: z.array(
        z.strictObject({
          level: z.string(),
          desirability: z.number().nullable(),
          low: z.number().nullable(),
          high: z.number().nullable(),
          winShare: z.number(),
        }),
      ),
      winner: z.string().nullable(),
      setAfterReveal: z.boolean(),
      /** Why nothing could be judged, in a sentence. */
      needs: z.string().nullable(),
    }),
    { long: true },
  ),
  /** Leaves a taster out of a trial's findings, with the reason; the findings say so and show both. */
  'tasters:setAside': writes(
    z.strictObject({ trial: id, taster: id, reason: line(400) }),
    z.strictObject({ taster: id }),
  ),
  'tasters:bringBack': writes(z.strictObject({ trial: id, taster: id }), z.strictObject({ taster: id })),
  /** How far single scores waver in this kitchen's own closed tastings, on a ten-point scale; null while there are none. */
  'panel:experience': reads(
    z.strictObject({}),
    z.strictObject({ errorSd: z.number().nullable(), tastings: z.int(), degreesOfFreedom: z.number() }),
  ),
} as const;
