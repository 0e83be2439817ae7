import { z } from 'zod';
import { count, id, line, moment, name, note, volume_mL } from './fields.ts';
import { additions, formula, vessel } from './formula.ts';
import { reads, writes } from './request.ts';

const target = z.strictObject({
  attribute: z.string(),
  mean: z.number(),
  /** Standard deviation between the tasters' scores; null with fewer than two. */
  spread: z.number().nullable(),
  n: z.int(),
});

/** What becomes of a level when it is promoted: the recipe, its target, its cautions, and the chain back. */
export const recipeDraft = z.strictObject({
  formula,
  base_mL: z.number(),
  volume_mL: z.number(),
  vessel,
  target: z.array(target),
  basis: z.enum(['panel', 'sips', 'none']),
  /** Read from the trial, and so empty once the trial is gone. */
  base: z.strictObject({ id, name: z.string() }).nullable(),
  alsoHeld: z.record(z.string(), z.union([z.string(), z.number(), z.boolean()])),
  cautions: z.array(z.strictObject({ code: z.string(), message: z.string(), basis: z.string() })),
  chain: z.strictObject({
    trial: z.strictObject({ id, question: z.string() }).nullable(),
    level: z.strictObject({ id, name: z.string() }).nullable(),
    jars: z.array(z.strictObject({ id, label: z.string() })),
    tastings: z.array(z.strictObject({ id, name: z.string(), scores: z.int() })),
  }),
});

export const recipeVersion = recipeDraft.extend({
  id,
  number: z.int(),
  createdAt: z.string(),
  why: z.string().nullable(),
});

const recipeSummary = z.strictObject({
  id,
  isSample: z.boolean(),
  name: z.string(),
  versions: z.int(),
  latest: z.int(),
  basis: z.enum(['panel', 'sips', 'none']),
  createdAt: z.string(),
  note: z.string().nullable(),
});

export const recipeRequests = {
  /** What promoting this level would write down. Writes nothing. */
  'recipes:preview': reads(z.strictObject({ trial: id, level: name }), recipeDraft),
  /** Makes the level a house recipe, or a new version of the one that has this name. `level` is its name or id. */
  'recipes:promote': writes(
    z.strictObject({ trial: id, level: name, name, why: note.optional() }),
    z.strictObject({ recipe: id, version: z.int() }),
  ),
  'recipes:list': reads(z.strictObject({}), z.strictObject({ recipes: z.array(recipeSummary) })),
  'recipes:open': reads(
    z.strictObject({ recipe: id }),
    recipeSummary.extend({
      versionList: z.array(recipeVersion),
      batches: z.array(
        z.strictObject({
          id,
          version: z.int(),
          madeAt: z.string(),
          volume_mL: z.number(),
          lot: z.string().nullable(),
          note: z.string().nullable(),
        }),
      ),
    }),
  ),
  /** The version's base and additions for another volume of finished drink. */
  'recipes:scale': reads(
    z.strictObject({ recipe: id, version: count(1, 100_000).optional(), volume_mL }),
    z.strictObject({ recipe: id, version: z.int(), volume_mL: z.number(), base_mL: z.number(), additions }),
  ),
  'recipes:remove': writes(z.strictObject({ recipe: id }), z.strictObject({ recipe: id })),
  'batches:log': writes(
    z.strictObject({
      recipe: id,
      version: count(1, 100_000).optional(),
      volume_mL,
      madeAt: moment.optional(),
      lot: line(60).optional(),
      note: note.optional(),
    }),
    z.strictObject({ batch: id }),
  ),
} as const;
