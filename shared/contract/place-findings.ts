import { z } from 'zod';
import { id } from './fields.ts';
import { reads } from './request.ts';

// What places say: tastings that put samples in order, and scored tastings looked at by order alone.

const placeTest = z.strictObject({
  chiSquare: z.number(),
  df: z.number(),
  p: z.number(),
  exact: z.boolean(),
  kendallW: z.number(),
  blocks: z.int(),
});

const rankSums = {
  samples: z.array(z.strictObject({ sample: z.string(), rankSum: z.number(), letters: z.string().nullable() })),
  test: placeTest.nullable(),
  /** Rank sums this far apart differ, all pairs looked at; null when none could. */
  criticalDifference: z.number().nullable(),
  criticalIsExact: z.boolean(),
  /** Page's test over ordered levels, one-sided either way: `better` when later levels are placed nearer the front. */
  page: z.strictObject({ l: z.number(), better: z.number(), worse: z.number(), exact: z.boolean() }).nullable(),
};

export const placeFindingRequests = {
  'findings:places': reads(
    z.strictObject({ trial: id }),
    z.strictObject({
      /** Each closed tasting that was ranked. */
      rankings: z.array(
        z.strictObject({
          tasting: id,
          name: z.string(),
          tasters: z.int(),
          /** Those who placed every level: the others can't be counted. */
          counted: z.int(),
          ...rankSums,
          /** How often each level stood in each place; ties stand at the better one. */
          places: z.array(z.strictObject({ sample: z.string(), counts: z.array(z.int()), mean: z.number() })),
          sentence: z.string(),
          ordered: z.string().nullable(),
          doubts: z.array(z.string()),
          /** The sentence with everybody counted; null when nobody is set aside. */
          withEverybody: z.string().nullable(),
        }),
      ),
      /** Scored attributes by order alone, best-scored first: a check that no scale can bend. */
      scored: z.array(z.strictObject({ attribute: z.string(), ...rankSums })),
    }),
  ),
} as const;
