import { z } from 'zod';
import { jarSheet } from './ferment.ts';
import { brix, id } from './fields.ts';
import { reason } from './reason.ts';
import { reads } from './request.ts';

// The ferment's arithmetic on what this kitchen has planned and read.

const level = z.strictObject({
  level: z.string(),
  sheet: jarSheet.nullable(),
  /** Why there is no sheet, with the way out; null when there is one. */
  problem: z.string().nullable(),
});

const point = z.strictObject({ hours: z.number(), value: z.number() });

export const jarScienceRequests = {
  /** The sheet of each level's jar: volume, sugar, alcohol, cold start, cautions. */
  'sheets:ofTrial': reads(
    z.strictObject({ trial: id }),
    z.strictObject({ base: z.string().nullable(), ambient_C: z.number(), levels: z.array(level) }),
  ),
  /** The readings of a trial's jars on one axis of hours, with the fall of sugar where four readings or more tell it. */
  'course:read': reads(
    z.strictObject({ trial: id, wanted_brix: brix.optional() }),
    z.strictObject({
      jars: z.array(
        z.strictObject({
          jar: id,
          label: z.string(),
          level: z.string(),
          brix: z.array(point),
          ph: z.array(point),
          temperature_C: z.array(point),
          fall: z
            .strictObject({ model: z.enum(['first-order', 'logistic']), residualSd: z.number(), curve: z.array(point) })
            .nullable(),
          /** Hours from the start until the wanted sweetness. */
          sweetEnough: z
            .strictObject({ hours: z.number(), low: z.number().nullable(), high: z.number().nullable() })
            .nullable(),
          /** Hours at 22 °C that did as much, from the temperature readings; null without any. */
          equivalentHours: z.strictObject({ low: z.number(), middle: z.number(), high: z.number() }).nullable(),
          cautions: z.array(z.strictObject({ code: z.string(), message: z.string(), basis: z.string() })),
          reasons: z.array(reason),
        }),
      ),
    }),
  ),
} as const;
