import { z } from 'zod';
import { count } from './fields.ts';
import { reason } from './reason.ts';
import { computes } from './request.ts';

// What a panel will be able to see, drawn while its size is chosen: no serving orders, no codes, nothing stored.

const gap = z.number().positive().max(1000);

export const panelSightRequests = {
  /** The chance to see a gap against its size, the smallest gap that shows, and the tasters it takes for some gaps. */
  'panel:sight': computes(
    z.strictObject({
      samples: count(2, 24),
      tasters: count(1, 500),
      replicates: count(1, 10).default(1),
      errorSd: gap,
      alpha: z.number().min(1e-9).lt(1).default(0.05),
      power: z.number().gt(0).lt(1).default(0.8),
      /** Where the curve ends, in scale points. */
      upTo: gap.default(8),
      differences: z.array(gap).max(20).default([1, 1.5, 2, 3]),
    }),
    z.strictObject({
      curve: z.array(z.strictObject({ difference: z.number(), power: z.number() })),
      detectableDifference: z.number().nullable(),
      tastersNeededFor: z.array(z.strictObject({ difference: z.number(), tasters: z.int().nullable() })),
      reasons: z.array(reason),
    }),
  ),
} as const;
