import { z } from 'zod';
import {
  alcohol_pctVol,
  id,
  mass_g,
  moment,
  name,
  note,
  revision,
  sugar_g_per_L,
  temperature_C,
  volume_mL,
} from './fields.ts';
import { reading, sighting } from './jars.ts';
import { reads, writes } from './request.ts';

// Cultures and the bases they make.

const culture = z.strictObject({
  id,
  revision,
  isSample: z.boolean(),
  name: z.string(),
  kind: z.string(),
  weight_g: z.number().nullable(),
  refreshedAt: z.string().nullable(),
  rests: z.string().nullable(),
  note: z.string().nullable(),
  /** Days between refreshings; null: the usual (two weeks, common practice). */
  refreshDays: z.number().nullable(),
  /** The culture it was split from. */
  parent: z.strictObject({ id, name: z.string() }).nullable(),
  /** It is being woken: fed day by day until it is lively again. */
  isReviving: z.boolean(),
});

/** What can be done to a culture. A revival is several feeds after a long rest, and its end. */
export const cultureActs = ['weighed', 'refreshed', 'split', 'revival-feed', 'revived'] as const;

const cultureEntry = z.strictObject({
  id,
  at: z.string(),
  what: z.enum(cultureActs),
  weight_g: z.number().nullable(),
  note: z.string().nullable(),
});

const refreshDays = z.number().min(0.25).max(366);
const plannedHours = z.number().min(1).max(8784);

const base = z.strictObject({
  id,
  revision,
  isSample: z.boolean(),
  name: z.string(),
  culture: z.strictObject({ id, name: z.string(), kind: z.string() }).nullable(),
  madeAt: z.string(),
  strainedAt: z.string().nullable(),
  volume_mL: z.number(),
  /** Promised to jars of saved trials. */
  allotted_mL: z.number(),
  left_mL: z.number(),
  temperature_C: z.number().nullable(),
  sugarStart_g_per_L: z.number().nullable(),
  sugarNow_g_per_L: z.number().nullable(),
  alcohol_pctVol: z.number().nullable(),
  note: z.string().nullable(),
  /** Hours that its first ferment is planned for; null: the usual (two days, common practice). */
  plannedHours: z.number().nullable(),
  /** What went into it: sugar, minerals, peels. */
  wentIn: z.string().nullable(),
});

const baseMembers = {
  culture: id.optional(),
  name,
  madeAt: moment.optional(),
  volume_mL,
  temperature_C: temperature_C.optional(),
  sugarStart_g_per_L: sugar_g_per_L.optional(),
  sugarNow_g_per_L: sugar_g_per_L.optional(),
  alcohol_pctVol: alcohol_pctVol.optional(),
  note: note.optional(),
  plannedHours: plannedHours.optional(),
  wentIn: note.optional(),
};

export const baseRequests = {
  'cultures:list': reads(z.strictObject({}), z.strictObject({ cultures: z.array(culture) })),
  'cultures:save': writes(
    z.strictObject({
      id: id.optional(),
      revision: revision.optional(),
      name,
      kind: name,
      weight_g: mass_g.optional(),
      refreshedAt: moment.optional(),
      rests: name.optional(),
      note: note.optional(),
      /** Left out, it stays; null is the usual again. */
      refreshDays: refreshDays.nullable().optional(),
    }),
    z.strictObject({ culture: id }),
  ),
  'cultures:open': reads(
    z.strictObject({ culture: id }),
    culture.extend({
      log: z.array(cultureEntry),
      children: z.array(z.strictObject({ id, name: z.string() })),
      bases: z.array(z.strictObject({ id, name: z.string() })),
    }),
  ),
  /** Weighs, refreshes or revives a culture; the first two and the feeds of a revival may bring a weight. */
  'cultures:log': writes(
    z.strictObject({
      culture: id,
      what: z.enum(cultureActs).exclude(['split']),
      at: moment.optional(),
      weight_g: mass_g.optional(),
      note: note.optional(),
    }),
    z.strictObject({ entry: id }),
  ),
  /** One becomes two: the new one takes its weight away from the old one and keeps its lineage. */
  'cultures:split': writes(
    z.strictObject({
      culture: id,
      name,
      weight_g: mass_g,
      at: moment.optional(),
      rests: name.optional(),
      note: note.optional(),
    }),
    z.strictObject({ culture: id }),
  ),
  'cultures:remove': writes(z.strictObject({ culture: id }), z.strictObject({ culture: id })),
  'bases:list': reads(z.strictObject({}), z.strictObject({ bases: z.array(base) })),
  'bases:open': reads(
    z.strictObject({ base: id }),
    base.extend({ readings: z.array(reading), sightings: z.array(sighting) }),
  ),
  'bases:start': writes(z.strictObject(baseMembers), z.strictObject({ base: id })),
  /** Only what is given changes; null forgets it. */
  'bases:change': writes(
    z.strictObject({
      base: id,
      revision: revision.optional(),
      culture: id.nullable().optional(),
      name: name.optional(),
      madeAt: moment.optional(),
      volume_mL: volume_mL.optional(),
      temperature_C: temperature_C.nullable().optional(),
      sugarStart_g_per_L: sugar_g_per_L.nullable().optional(),
      sugarNow_g_per_L: sugar_g_per_L.nullable().optional(),
      alcohol_pctVol: alcohol_pctVol.nullable().optional(),
      note: note.nullable().optional(),
      plannedHours: plannedHours.nullable().optional(),
      wentIn: note.nullable().optional(),
    }),
    z.strictObject({ base: id }),
  ),
  'bases:strain': writes(
    z.strictObject({ base: id, at: moment.optional(), sugarNow_g_per_L: sugar_g_per_L.optional() }),
    z.strictObject({ base: id }),
  ),
  'bases:remove': writes(z.strictObject({ base: id }), z.strictObject({ base: id })),
} as const;
