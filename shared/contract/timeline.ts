import { z } from 'zod';
import { sightingKinds } from '../closed-lists.ts';
import { id } from './fields.ts';

import { reads } from './request.ts';

/** What was written down of a jar, and when. */
export const timelineKinds = ['reading', 'sighting', 'sip', 'photo'] as const;

const entry = z.strictObject({
  at: z.string(),
  kind: z.enum(timelineKinds),
  /** What was seen, where it is a sighting. */
  what: z.enum(sightingKinds).nullable(),
});

export const timelineRequests = {
  /** A trial from its first start to its last tasting: what was planned and done of each jar, what was written down, when it was tasted. */
  'trials:timeline': reads(
    z.strictObject({ trial: id }),
    z.strictObject({
      jars: z.array(
        z.strictObject({
          jar: id,
          label: z.string(),
          level: z.string(),
          plannedStart: z.string(),
          plannedPull: z.string(),
          startedAt: z.string().nullable(),
          /** When it left the shelf, and how; null while it stands. */
          endedAt: z.string().nullable(),
          endedBy: z.enum(['pulled', 'strained', 'discarded']).nullable(),
          entries: z.array(entry),
        }),
      ),
      tastings: z.array(z.strictObject({ id, name: z.string(), heldAt: z.string(), closedAt: z.string().nullable() })),
    }),
  ),
} as const;
