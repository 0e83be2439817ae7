import { z } from 'zod';
import { sightingKinds } from '../closed-lists.ts';
import { bottling } from './bottles.ts';
import { caution, jarSheet } from './ferment.ts';
import { brix, id, sugar_g_per_L } from './fields.ts';
import { reason } from './reason.ts';
import { reads } from './request.ts';

// The ferment's arithmetic on what this kitchen has planned and read.

const level = z.strictObject({
  level: z.string(),
  sheet: jarSheet.nullable(),
  /** Why there is no sheet, or what it lacks, with the way out; null when it lacks nothing. */
  problem: z.string().nullable(),
});

const point = z.strictObject({ hours: z.number(), value: z.number() });

/** Open where the readings don't bound it. */
const openRange = z.strictObject({ low: z.number(), high: z.number().nullable() });
const range = z.strictObject({ low: z.number(), high: z.number() });
const middleRange = range.extend({ middle: z.number() });
const warmth = z.strictObject({ hours: z.number(), temperature_C: z.number() });

/** How sure the cold start's hours are, what they rest on, and how much of a slow start they explain. */
const cold = z.strictObject({
  hours: openRange,
  lostHours: openRange,
  /** What the warming was reckoned with. */
  coefficient_W_per_m2K: z.number(),
  /** The jar's own two readings that calibrated it; null: as in still air. */
  own: z
    .strictObject({ first: warmth, second: warmth, timeConstant_h: openRange.extend({ middle: z.number() }) })
    .nullable(),
  /** Against another jar's first bubbles, where both were noted. */
  slowStart: z
    .strictObject({ against: z.string(), late_h: z.number(), cold_h: range, rest_h: range, sentence: z.string() })
    .nullable(),
});

const jarScience = z.strictObject({
  sheet: jarSheet.nullable(),
  /** Why there is no sheet, with the way out. */
  problem: z.string().nullable(),
  room: z.strictObject({ temperature_C: z.number(), from: z.enum(['plan', 'base', 'usual']) }),
  base: z
    .strictObject({
      id,
      name: z.string(),
      sugar: z.strictObject({ g_per_L: z.number(), from: z.enum(['now', 'start']) }).nullable(),
      /** As given, or at most what its own sugars could have become. */
      alcohol: z.strictObject({ pctVol: z.number(), from: z.enum(['given', 'fermented']) }).nullable(),
    })
    .nullable(),
  /** Whether vessel and cover keep the gas in. */
  isClosed: z.boolean(),
  /** The sugar that the pressure is reckoned from. */
  closing: z.strictObject({ sugar_g_per_L: z.number(), from: z.enum(['asked', 'reading', 'start']) }).nullable(),
  /** What it was last filled into: the sugar, the closure and the size that were noted then go before what the plan says. */
  bottled: bottling.nullable(),
  cold: cold.nullable(),
});

const event = z.strictObject({
  hours: z.number(),
  what: z.enum([...sightingKinds, 'pulled', 'strained', 'discarded']),
  note: z.string().nullable(),
});

export const jarScienceRequests = {
  /** The sheet of each level's jar: volume, sugar, alcohol, cold start, cautions. */
  'sheets:ofTrial': reads(
    z.strictObject({ trial: id }),
    z.strictObject({ base: z.string().nullable(), ambient_C: z.number(), levels: z.array(level) }),
  ),
  /** One jar's sheet with the doubt of its figures; `sealedWithSugar_g_per_L` asks what closing it with that much would do. */
  'sheets:ofJar': reads(z.strictObject({ jar: id, sealedWithSugar_g_per_L: sugar_g_per_L.optional() }), jarScience),
  /** The readings of a trial's jars on one axis of hours, with the fall of sugar where four readings or more tell it. */
  'course:read': reads(
    z.strictObject({ trial: id, wanted_brix: brix.optional() }),
    z.strictObject({
      jars: z.array(
        z.strictObject({
          jar: id,
          label: z.string(),
          level: z.string(),
          isControl: z.boolean(),
          brix: z.array(point),
          ph: z.array(point),
          temperature_C: z.array(point),
          fall: z
            .strictObject({
              model: z.enum(['first-order', 'logistic']),
              residualSd: z.number(),
              /** The fitted fall with the 95 % interval of the curve. */
              curve: z.array(point.extend({ low: z.number().nullable(), high: z.number().nullable() })),
            })
            .nullable(),
          /** What was seen, and when it was pulled, strained or discarded. */
          events: z.array(event),
          /** Hours it stood until it was pulled, or until now, and how many at 22 °C would have done as much; null before the start. */
          stood: z
            .strictObject({
              hours: z.number(),
              equivalent: middleRange,
              from: z.enum(['readings', 'plan', 'base', 'usual']),
            })
            .nullable(),
          /** Hours from the start until the wanted sweetness. */
          sweetEnough: z
            .strictObject({ hours: z.number(), low: z.number().nullable(), high: z.number().nullable() })
            .nullable(),
          /** Hours at 22 °C that did as much, from the temperature readings; null without any. */
          equivalentHours: middleRange.nullable(),
          cautions: z.array(caution),
          reasons: z.array(reason),
        }),
      ),
    }),
  ),
} as const;
