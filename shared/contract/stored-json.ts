import { z } from 'zod';
import { allergen } from './fields.ts';
import { formula, vessel } from './formula.ts';
import { ownMeasures } from './people-and-pantry.ts';
import { recipeDraft } from './recipes.ts';
import { trialWhole } from './trials.ts';

/** Columns that hold JSON, by table, each with the shape that the screens count on. A test holds this list against the schema. */
export const storedJson: Readonly<Record<string, Readonly<Record<string, z.ZodType>>>> = {
  tasters: { avoids: z.array(allergen).max(40) },
  ingredients: { allergens: z.array(allergen).max(40), measures: ownMeasures },
  trials: { held: trialWhole.shape.held },
  levels: { formula },
  presentations: { codes: z.array(z.string().regex(/^\d{3}$/)).max(3) },
  recipe_versions: { formula, vessel, target: recipeDraft.shape.target.max(100) },
  erasures: { entries: z.array(z.tuple([z.int(), z.int()])) },
};
