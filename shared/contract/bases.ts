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
});

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
    }),
    z.strictObject({ base: id }),
  ),
  'bases:strain': writes(
    z.strictObject({ base: id, at: moment.optional(), sugarNow_g_per_L: sugar_g_per_L.optional() }),
    z.strictObject({ base: id }),
  ),
  'bases:remove': writes(z.strictObject({ base: id }), z.strictObject({ base: id })),
} as const;
