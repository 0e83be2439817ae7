import { z } from 'zod';
import { sightingKinds } from '../closed-lists.ts';
import { brix, id, line, moment, name, note, ph, revision, sg, temperature_C } from './fields.ts';
import { formula, vessel } from './formula.ts';
import { reads, writes } from './request.ts';

export const jarStates = ['planned', 'fermenting', 'pulled', 'strained', 'discarded'] as const;

/** Acids that a titration may be stated as. */
export const acids = ['lactic', 'acetic', 'citric', 'malic', 'tartaric'] as const;

export const jar = z.strictObject({
  id,
  revision,
  isSample: z.boolean(),
  trial: id,
  level: id,
  levelName: z.string(),
  label: z.string(),
  replicate: z.int(),
  isControl: z.boolean(),
  state: z.enum(jarStates),
  base_mL: z.number(),
  plannedStart: z.string(),
  plannedPull: z.string(),
  startedAt: z.string().nullable(),
  pulledAt: z.string().nullable(),
  strainedAt: z.string().nullable(),
  discardedAt: z.string().nullable(),
  discardReason: z.string().nullable(),
  /** Froth was seen, and nothing since that says it is gone. */
  isFrothy: z.boolean(),
});

export const reading = z.strictObject({
  id,
  takenAt: z.string(),
  brix: z.number().nullable(),
  sg: z.number().nullable(),
  ph: z.number().nullable(),
  acidity_g_per_L: z.number().nullable(),
  acidityAs: z.enum(acids).nullable(),
  temperature_C: z.number().nullable(),
  note: z.string().nullable(),
});

export const sighting = z.strictObject({
  id,
  seenAt: z.string(),
  what: z.enum(sightingKinds),
  note: z.string().nullable(),
  /** Seen by mistake: it stays to be read, and counts no more. */
  correctedAt: z.string().nullable(),
  correction: z.string().nullable(),
});

/** Mould that was seen in the base a jar was poured from. */
export const baseMould = z.strictObject({ base: id, name: z.string(), seenAt: z.string() });

export const sip = z.strictObject({
  id,
  takenAt: z.string(),
  tang: z.number().nullable(),
  fizz: z.number().nullable(),
  sweetness: z.number().nullable(),
  liking: z.number().nullable(),
  note: z.string().nullable(),
});

/** Several jars change together: all or none. */
const someJars = z.strictObject({ jars: z.array(id).min(1).max(96), at: moment.optional() });
const changedJars = z.strictObject({ jars: z.array(jar) });

const zeroToTen = z.number().min(0).max(10);

export const owner = { jar: id.optional(), base: id.optional() };
export const oneOwner = (about: { jar?: string | undefined; base?: string | undefined }) =>
  (about.jar === undefined) !== (about.base === undefined);
export const oneOwnerWords = { error: 'name either the jar or the base', path: ['jar'] };

export const jarRequests = {
  'jars:open': reads(
    z.strictObject({ jar: id }),
    z.strictObject({
      jar,
      formula,
      vessel,
      question: z.string(),
      readings: z.array(reading),
      sightings: z.array(sighting),
      sips: z.array(sip),
      baseMould: baseMould.nullable(),
    }),
  ),
  /** `stock`: what went out of the pantry. `left_g` null: nobody had counted it; `short_g`: used beyond what was noted. */
  'jars:start': writes(
    someJars,
    changedJars.extend({
      stock: z.array(
        z.strictObject({
          name: z.string(),
          taken_g: z.number(),
          left_g: z.number().nullable(),
          short_g: z.number().nullable(),
        }),
      ),
    }),
  ),
  'jars:pull': writes(someJars, changedJars),
  'jars:strain': writes(someJars, changedJars),
  /** Takes the jars out of every open tasting too; `tastings` names those. */
  'jars:discard': writes(someJars.extend({ reason: line(400) }), changedJars.extend({ tastings: z.array(z.string()) })),
  'readings:log': writes(
    z
      .strictObject({
        ...owner,
        at: moment.optional(),
        brix: brix.optional(),
        sg: sg.optional(),
        ph: ph.optional(),
        acidity: z.strictObject({ g_per_L: z.number().min(0).max(200), as: z.enum(acids) }).optional(),
        temperature_C: temperature_C.optional(),
        note: note.optional(),
      })
      .refine(oneOwner, oneOwnerWords)
      .refine(
        (all) => [all.brix, all.sg, all.ph, all.acidity, all.temperature_C].some((value) => value !== undefined),
        { error: 'give at least one of brix, sg, ph, acidity, temperature_C', path: ['brix'] },
      ),
    z.strictObject({ reading: id }),
  ),
  /** The maker's own taste of one jar; never mixed with a panel's scores. */
  'sips:log': writes(
    z
      .strictObject({
        jar: id,
        at: moment.optional(),
        tang: zeroToTen.optional(),
        fizz: zeroToTen.optional(),
        sweetness: zeroToTen.optional(),
        liking: z.number().min(1).max(9).optional(),
        note: note.optional(),
      })
      .refine((all) => [all.tang, all.fizz, all.sweetness, all.liking].some((value) => value !== undefined), {
        error: 'give at least one of tang, fizz, sweetness, liking',
        path: ['tang'],
      }),
    z.strictObject({ sip: id }),
  ),
  /** A mistaken entry is taken out; history keeps it. A sighting is corrected instead. */
  'entries:remove': writes(z.strictObject({ kind: z.enum(['reading', 'sip']), id }), z.strictObject({ removed: id })),
  'sips:byTrial': reads(
    z.strictObject({ trial: id }),
    z.strictObject({
      sips: z.array(sip.extend({ jar: id, label: name, levelName: z.string(), day: z.number() })),
    }),
  ),
} as const;
