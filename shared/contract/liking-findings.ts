import { z } from 'zod';
import { id } from './fields.ts';
import { reads } from './request.ts';

// What the panel's liking hangs on: too little or too much of something, and what moves with it.

const penaltyGroup = z.strictObject({
  n: z.int(),
  share: z.number(),
  liking: z.number().nullable(),
  /** Mean liking of those who found it just right less that of this group. */
  drop: z.number().nullable(),
  low: z.number().nullable(),
  high: z.number().nullable(),
  p: z.number().nullable(),
  penalty: z.number().nullable(),
  attend: z.boolean(),
});

const penalties = z.strictObject({
  right: z.strictObject({ n: z.int(), share: z.number(), liking: z.number().nullable() }),
  tooLittle: penaltyGroup,
  tooMuch: penaltyGroup,
});

/** How many answered what, liking scored beside it or not. */
const counts = z.strictObject({ answers: z.int(), tooLittle: z.int(), right: z.int(), tooMuch: z.int() });

export const likingFindingRequests = {
  /** The just-about-right scales of a trial's closed tastings: who found too little or too much, and what liking it cost. */
  'findings:penalties': reads(
    z.strictObject({ trial: id }),
    z.strictObject({
      attributes: z.array(
        z.strictObject({
          attribute: z.string(),
          counts,
          /** Answers without a liking score beside them: counted, but not weighed. */
          withoutLiking: z.int(),
          /** Null when no answer has a liking score beside it. */
          penalties: penalties.nullable(),
          sentences: z.array(z.string()),
          levels: z.array(
            z.strictObject({
              level: z.string(),
              counts,
              penalties: penalties.nullable(),
              sentences: z.array(z.string()),
            }),
          ),
        }),
      ),
      rule: z.string(),
    }),
  ),
  /** How liking moves with each other attribute, taster by taster. */
  'findings:drivers': reads(
    z.strictObject({ trial: id }),
    z.strictObject({
      drivers: z.array(
        z.strictObject({
          attribute: z.string(),
          slope: z.number(),
          low: z.number(),
          high: z.number(),
          /** Of luck alone, adjusted for the number of attributes. */
          chance: z.number(),
          tasters: z.array(z.strictObject({ taster: z.string(), own: z.number(), slope: z.number() })),
          sentence: z.string(),
        }),
      ),
      /** Attributes that could not be looked at, each with why. */
      untold: z.array(z.strictObject({ attribute: z.string(), why: z.string() })),
      together: z.array(z.string()),
      /** Why nothing can be told, in a sentence; null when something can. */
      needs: z.string().nullable(),
    }),
  ),
} as const;
