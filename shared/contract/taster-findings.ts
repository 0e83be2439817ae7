import { z } from 'zod';
import { id } from './fields.ts';
import { reads } from './request.ts';

const interval = z.tuple([z.number(), z.number()]).readonly();

export const tasterFindingRequests = {
  /** How each taster used each scale in a trial's closed tastings, and how far they go with the others; those set aside are marked. */
  'findings:tasters': reads(
    z.strictObject({ trial: id }),
    z.strictObject({
      attributes: z.array(
        z.strictObject({
          attribute: z.string(),
          scale: z.tuple([z.number(), z.number()]),
          tasters: z.array(
            z.strictObject({
              taster: z.string(),
              isAside: z.boolean(),
              scores: z.int(),
              lowest: z.number(),
              highest: z.number(),
              mean: z.number(),
              meanInterval: interval.nullable(),
              /** Standard deviation of their scores. */
              spread: z.number().nullable(),
              /** Samples that they and others scored. */
              shared: z.int(),
              /** Correlation of their sample means with the mean of the others', −1 to 1. */
              agreement: z.number().nullable(),
              agreementInterval: interval.nullable(),
            }),
          ),
          sentence: z.string(),
        }),
      ),
    }),
  ),
} as const;
