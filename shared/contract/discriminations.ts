import { z } from 'zod';
import { count, drawnSeed, id, moment, name } from './fields.ts';
import { reason } from './reason.ts';
import { computes, reads, writes } from './request.ts';

// Telling two jars apart: triangle, duo-trio and paired tests, from set-up to result.

export const discriminationMethods = ['triangle', 'duo-trio', 'paired', 'paired-two-sided'] as const;
const method = z.enum(discriminationMethods);

const summary = z.strictObject({
  id,
  isSample: z.boolean(),
  name: z.string(),
  trial: id.nullable(),
  method,
  heldAt: z.string(),
  closedAt: z.string().nullable(),
  presentations: z.int(),
  answered: z.int(),
});

const presentation = z.strictObject({
  taster: id,
  tasterName: z.string(),
  round: z.int(),
  /** The codes of the cups to choose from, in the order of serving; a duo-trio's reference comes before them and has none. */
  codes: z.array(z.string()),
  /** The place of the chosen cup, from 1 (a reference is not counted). */
  chosen: z.int().nullable(),
  /** Which jar is in which cup; null while the test is open, as is all below. */
  cups: z.string().nullable(),
  /** The label of the jar in the chosen cup. */
  chosenJar: z.string().nullable(),
  /** Whether the choice counts as right; null also where no jar was expected. */
  isRight: z.boolean().nullable(),
});

export const discriminationResult = z.strictObject({
  correct: z.int(),
  trials: z.int(),
  /** How many people gave these answers. */
  tasters: z.int(),
  expectedByGuessing: z.number(),
  p: z.number().nullable(),
  minimumCorrect: z.int().nullable(),
  significant: z.boolean(),
  dPrime: z.number().nullable(),
  dPrimeLow: z.number().nullable(),
  dPrimeHigh: z.number().nullable(),
  sentence: z.string(),
});

export const discriminationRequests = {
  /** What so many answers can show, before a cup is poured. `dPrime` is the difference that `trialsNeeded` is told for. */
  'panel:discriminationDesign': computes(
    z.strictObject({
      method,
      trials: count(1, 5000),
      dPrime: z.number().min(0.1).max(10).default(1.5),
      alpha: z.number().min(1e-9).lt(1).default(0.05),
      power: z.number().gt(0).lt(1).default(0.8),
    }),
    z.strictObject({
      minimumCorrect: z.int().nullable(),
      expectedByGuessing: z.number(),
      /** The fewest answers of which all right would be more than luck. */
      fewestTrials: z.int(),
      /** For a slight, a clear and a large difference: the chance of a right answer, and of finding the difference. */
      chances: z.array(z.strictObject({ dPrime: z.number(), right: z.number(), power: z.number() })),
      trialsNeeded: z.int().nullable(),
      reasons: z.array(reason),
    }),
  ),
  /** Sets a test up: one round for each taster and repeat, presentation orders balanced and drawn by the seed. */
  'discriminations:build': writes(
    z
      .strictObject({
        trial: id.optional(),
        name,
        method,
        jarA: id,
        jarB: id,
        /** For a paired test: what is asked of the cups, such as "sweeter". */
        asked: name.optional(),
        /** For a one-sided paired test: the jar expected to be chosen. */
        expected: z.enum(['A', 'B']).optional(),
        tasters: z.array(id).min(1).max(500),
        rounds: count(1, 10).default(1),
        heldAt: moment.optional(),
        seed: drawnSeed,
      })
      .refine(({ jarA, jarB }) => jarA !== jarB, { error: 'the two jars must differ', path: ['jarB'] })
      .refine(({ method: chosen, expected }) => (chosen === 'paired') === (expected !== undefined), {
        error: 'name the expected jar exactly for the one-sided paired test',
        path: ['expected'],
      }),
    z.strictObject({ discrimination: id }),
  ),
  'discriminations:list': reads(z.strictObject({}), z.strictObject({ discriminations: z.array(summary) })),
  'discriminations:open': reads(
    z.strictObject({ discrimination: id }),
    summary.extend({
      asked: z.string().nullable(),
      expected: z.enum(['A', 'B']).nullable(),
      jarA: z.strictObject({ id, label: z.string(), level: z.string() }).nullable(),
      jarB: z.strictObject({ id, label: z.string(), level: z.string() }).nullable(),
      list: z.array(presentation),
      /** Whom to ask before serving; they name an ingredient, never a cup. */
      warnings: z.array(z.string()),
      result: discriminationResult.nullable(),
    }),
  ),
  /** Which jar goes into which cup: for the person who pours. */
  'discriminations:pour': reads(
    z.strictObject({ discrimination: id }),
    z.strictObject({
      jarA: z.string(),
      jarB: z.string(),
      list: z.array(
        z.strictObject({ tasterName: z.string(), round: z.int(), cups: z.string(), codes: z.array(z.string()) }),
      ),
    }),
  ),
  /** One taster's choice in one round; `null` takes it back. */
  'discriminations:answer': writes(
    z.strictObject({ discrimination: id, taster: id, round: count(1, 10), chosen: count(1, 3).nullable() }),
    z.strictObject({ answered: z.int() }),
  ),
  /** Reveals the cups. This can't be undone. */
  'discriminations:close': writes(z.strictObject({ discrimination: id }), z.strictObject({ discrimination: id })),
  'discriminations:remove': writes(z.strictObject({ discrimination: id }), z.strictObject({ discrimination: id })),
} as const;
