import { z } from 'zod';
import { seed } from './fields.ts';
import { reason } from './reason.ts';
import { computes } from './request.ts';

// The panel's arithmetic, as scripts ask for it: no store needed.

const label = z.string().min(1).max(200);
const finite = z.number();
/** Chance of a false finding; smaller ones than this leave the range in which critical values can be told. */
const alpha = z.number().min(1e-9).lt(1).default(0.05);

const panelScore = z.strictObject({
  taster: label,
  sample: label,
  attribute: label,
  score: finite,
  replicate: z.int().min(1).max(1000).optional(),
  jar: label.optional(),
});

/** A test on `dfSample` and `dfError` degrees of freedom. */
const blockTest = z.strictObject({ f: finite, dfSample: finite, dfError: finite, p: finite });

const attributeAnalysis = z.strictObject({
  attribute: label,
  tasters: z.int(),
  samples: z.int(),
  scores: z.int(),
  missing: z.int(),
  means: z.array(
    z.strictObject({
      sample: label,
      n: z.int(),
      mean: finite.nullable(),
      low: finite.nullable(),
      high: finite.nullable(),
      letters: z.string().nullable(),
    }),
  ),
  test: blockTest.nullable(),
  variances: z.strictObject({
    taster: finite.nullable(),
    tasterBySample: finite.nullable(),
    error: finite.nullable(),
  }),
  pairs: z
    .array(z.strictObject({ a: label, b: label, difference: finite, low: finite, high: finite, p: finite }))
    .nullable(),
  versusControl: z
    .array(z.strictObject({ sample: label, difference: finite, low: finite, high: finite, p: finite }))
    .nullable(),
  ranks: z
    .strictObject({
      chiSquare: finite,
      df: finite,
      p: finite,
      exact: z.boolean(),
      kendallW: finite,
      blocks: z.int(),
    })
    .nullable(),
  trend: z
    .strictObject({
      slope: finite,
      slopeLow: finite.nullable(),
      slopeHigh: finite.nullable(),
      slopeP: finite.nullable(),
      curvature: finite.nullable(),
      curvatureP: finite.nullable(),
      pageL: finite.nullable(),
      pageP: finite.nullable(),
      curve: z.array(z.strictObject({ level: finite, fit: finite, low: finite.nullable(), high: finite.nullable() })),
      best: z.strictObject({ level: finite, low: finite.nullable(), high: finite.nullable() }).nullable(),
    })
    .nullable(),
  jars: z.strictObject({ f: finite, dfLevel: finite, dfJar: finite, p: finite }).nullable(),
  reasons: z.array(reason),
});

const tasterForm = z.strictObject({
  taster: label,
  attribute: label,
  discriminationP: finite.nullable(),
  repeatability: finite.nullable(),
  agreement: finite.nullable(),
  reasons: z.array(reason),
});

export const panelAnalysis = z.strictObject({
  attributes: z.array(attributeAnalysis),
  tasters: z.array(tasterForm),
});

export const panelRequests = {
  /** What a panel's scores say, attribute by attribute. */
  'panel:analyse': computes(
    z.strictObject({
      scores: z.array(panelScore).min(1).max(2_000_000),
      control: label.optional(),
      levels: z.record(label, finite).optional(),
      scales: z
        .record(
          label,
          z.tuple([finite, finite]).refine(([low, high]) => low < high, 'the lower end must lie below the upper end'),
        )
        .optional(),
      liking: label.default('liking'),
      alpha,
      seed: seed.default(1),
    }),
    panelAnalysis,
    { long: true },
  ),
  /** Whether a triangle, duo-trio or paired test found a difference, and how large it is. */
  'panel:discriminate': computes(
    z
      .strictObject({
        method: z.enum(['triangle', 'duo-trio', 'paired', 'paired-two-sided']),
        correct: z.int().min(0).max(1_000_000),
        trials: z.int().min(1).max(1_000_000),
        alpha,
      })
      .refine(({ correct, trials }) => correct <= trials, {
        message: 'there cannot be more correct answers than trials',
        path: ['correct'],
      })
      .refine(({ method, correct, trials }) => method !== 'paired-two-sided' || 2 * correct >= trials, {
        message: 'two-sided: give the count of the sample chosen more often',
        path: ['correct'],
      }),
    z.strictObject({
      p: finite,
      minimumCorrect: z.int().nullable(),
      significant: z.boolean(),
      dPrime: finite.nullable(),
      dPrimeLow: finite.nullable(),
      dPrimeHigh: finite.nullable(),
      reasons: z.array(reason),
    }),
  ),
  /** Serving orders, blind codes and what the panel will be able to see. */
  'panel:design': computes(
    z.strictObject({
      samples: z
        .array(label)
        .min(2)
        .max(24)
        .refine((all) => new Set(all).size === all.length, 'each sample may stand in the list once'),
      tasters: z.int().min(1).max(500),
      replicates: z.int().min(1).max(10).default(1),
      errorSd: z.number().positive().max(1000),
      difference: z.number().positive().max(1000),
      alpha,
      power: z.number().gt(0).lt(1).default(0.8),
      seed,
    }),
    z.strictObject({
      sittings: z.array(z.strictObject({ orders: z.array(z.array(label)) })),
      codes: z.record(label, z.string()),
      balance: z.strictObject({
        place: z.record(label, z.array(z.int())),
        follows: z.record(label, z.record(label, z.int())),
      }),
      detectableDifference: finite.nullable(),
      powerAtDifference: finite.nullable(),
      tastersNeeded: z.int().nullable(),
      reasons: z.array(reason),
    }),
  ),
} as const;
