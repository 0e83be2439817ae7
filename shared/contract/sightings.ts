import { z } from 'zod';
import { sightingKinds } from '../closed-lists.ts';
import { id, line, moment, note } from './fields.ts';
import { oneOwner, oneOwnerWords, owner } from './jars.ts';
import { writes } from './request.ts';

export const sightingRequests = {
  /** Mould discards the jar in the same step, and takes it out of every open tasting; `tastings` names those. */
  'sightings:log': writes(
    z
      .strictObject({ ...owner, at: moment.optional(), what: z.enum(sightingKinds), note: note.optional() })
      .refine(oneOwner, oneOwnerWords),
    z.strictObject({ sighting: id, discarded: z.boolean(), tastings: z.array(z.string()) }),
  ),
  /**
   * A sighting that was a mistake: it stays to be read, struck through, and counts no more. If it had discarded its jar, the jar comes
   * back, also into the tastings that are still open; one that was revealed meanwhile stays without it.
   */
  'sightings:correct': writes(
    z.strictObject({ sighting: id, why: line(400).optional() }),
    z.strictObject({
      sighting: id,
      /** The label of the jar that came back; null when none did. */
      broughtBack: z.string().nullable(),
      tastings: z.array(z.string()),
      /** Tastings that were revealed without the jar, and stay so. */
      without: z.array(z.string()),
    }),
  ),
  /** The daily look or stir of several jars in one step: nothing new was seen. */
  'jars:look': writes(
    z.strictObject({
      jars: z.array(id).min(1).max(96),
      at: moment.optional(),
      what: z.enum(['looked', 'stirred']).default('looked'),
    }),
    z.strictObject({ sightings: z.array(id) }),
  ),
} as const;
