import { z } from 'zod';
import { allergen, id, name, note, revision } from './fields.ts';
import { reads, writes } from './request.ts';

// Who tastes, with what they avoid; what can be weighed in.

export const taster = z.strictObject({
  id,
  revision,
  isSample: z.boolean(),
  name: z.string(),
  avoids: z.array(allergen),
  avoidsAlcohol: z.boolean(),
  note: z.string().nullable(),
  tastings: z.int(),
});

export const ingredientKinds = [
  'fruit',
  'vegetable',
  'juice',
  'herb',
  'root',
  'spice',
  'sweetener',
  'tea',
  'grain',
  'other',
] as const;

const share = z.number().min(0).max(100);
const composition = {
  water_g: share.nullable(),
  sugars_g: share.nullable(),
  sucrose_g: share.nullable(),
  glucose_g: share.nullable(),
  fructose_g: share.nullable(),
  fibre_g: share.nullable(),
  protein_g: share.nullable(),
  fat_g: share.nullable(),
  ash_g: share.nullable(),
};

/** An ingredient of the pantry: `id` is null for those that come with the program. Per 100 g; null is unknown. */
export const ingredient = z.strictObject({
  id: id.nullable(),
  revision: revision.nullable(),
  isSample: z.boolean(),
  name: z.string(),
  kind: z.enum(ingredientKinds),
  ...composition,
  allergens: z.array(allergen),
  source: z.string().nullable(),
  note: z.string().nullable(),
  /** Other names it answers to, the description in USDA SR among them. */
  aliases: z.array(z.string()),
  fdcId: z.int().nullable(),
  /** A colour to draw it with, #rrggbb; null for the owner's own. */
  colour: z.string().nullable(),
  /** What a household measure weighs. */
  measures: z.array(z.strictObject({ unit: z.string(), form: z.string().nullable(), mass_g: z.number() })),
  onHand_g: z.number().nullable(),
  /** In the owner's own currency. */
  price_per_kg: z.number().nullable(),
});

const given = share.optional();

export const peopleAndPantryRequests = {
  'tasters:list': reads(z.strictObject({}), z.strictObject({ tasters: z.array(taster) })),
  'tasters:save': writes(
    z.strictObject({
      id: id.optional(),
      revision: revision.optional(),
      name,
      avoids: z.array(allergen).max(14).default([]),
      avoidsAlcohol: z.boolean().default(false),
      note: note.optional(),
    }),
    z.strictObject({ taster: id }),
  ),
  'tasters:remove': writes(z.strictObject({ taster: id }), z.strictObject({ taster: id })),
  'pantry:list': reads(z.strictObject({}), z.strictObject({ ingredients: z.array(ingredient) })),
  'pantry:save': writes(
    z
      .strictObject({
        id: id.optional(),
        revision: revision.optional(),
        name,
        kind: z.enum(ingredientKinds),
        water_g: given,
        sugars_g: given,
        sucrose_g: given,
        glucose_g: given,
        fructose_g: given,
        fibre_g: given,
        protein_g: given,
        fat_g: given,
        ash_g: given,
        allergens: z.array(allergen).max(14).default([]),
        note: note.optional(),
      })
      .refine(
        (all) =>
          [all.water_g, all.sugars_g, all.fibre_g, all.protein_g, all.fat_g, all.ash_g].reduce<number>(
            (sum, part) => sum + (part ?? 0),
            0,
          ) <= 101,
        {
          error: 'its parts together cannot exceed 100 g in 100 g',
          path: ['sugars_g'],
        },
      ),
    z.strictObject({ ingredient: id }),
  ),
  /** What is on hand of an ingredient and what it costs; null forgets it. Starting a jar takes from what is on hand. */
  'pantry:stock': writes(
    z.strictObject({
      name,
      onHand_g: z.number().min(0).max(1_000_000).nullable().optional(),
      price_per_kg: z.number().min(0).max(100_000).nullable().optional(),
    }),
    z.strictObject({ name: z.string(), onHand_g: z.number().nullable(), price_per_kg: z.number().nullable() }),
  ),
  'pantry:remove': writes(z.strictObject({ ingredient: id }), z.strictObject({ ingredient: id })),
} as const;
