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

/** What household measures there are; `each` is a piece. */
export const measureUnits = ['cup', 'fl oz', 'tbsp', 'tsp', 'each'] as const;

/** What one household measure weighs, and how the ingredient is cut or thawed in it. */
export const ownMeasures = z
  .array(
    z.strictObject({ unit: z.enum(measureUnits), form: name.nullable(), mass_g: z.number().min(0.001).max(100_000) }),
  )
  .max(30);

/** Where figures come from: the label, a table, a measurement. */
const source = z.string().trim().min(1).max(400);

/** An ingredient of the pantry. Per 100 g; null is unknown. `id` is that of the owner's row, null where there is none. */
export const ingredient = z.strictObject({
  id: id.nullable(),
  revision: revision.nullable(),
  isSample: z.boolean(),
  /** Comes with the program. */
  isBuiltIn: z.boolean(),
  name: z.string(),
  kind: z.enum(ingredientKinds),
  ...composition,
  allergens: z.array(allergen),
  source: z.string().nullable(),
  /** Which figures of a built-in ingredient are the owner's, and where those come from. */
  ownFigures: z.array(z.string()),
  ownSource: z.string().nullable(),
  note: z.string().nullable(),
  /** Other names it answers to, the description in USDA SR among them. */
  aliases: z.array(z.string()),
  fdcId: z.int().nullable(),
  /** A colour to draw it with, #rrggbb; null for the owner's own. */
  colour: z.string().nullable(),
  /** What a household measure weighs. */
  measures: z.array(z.strictObject({ unit: z.enum(measureUnits), form: z.string().nullable(), mass_g: z.number() })),
  onHand_g: z.number().nullable(),
  /** The row that keeps what is on hand and what it costs; null where nobody said. */
  stock: id.nullable(),
  /** Used beyond what was noted as on hand; null when the note held. */
  short_g: z.number().nullable(),
  /** In the kitchen's currency; at most one of the two. */
  price_per_kg: z.number().nullable(),
  price_per_L: z.number().nullable(),
});

const given = share.optional();

interface Kinds {
  sugars_g?: number | undefined;
  sucrose_g?: number | undefined;
  glucose_g?: number | undefined;
  fructose_g?: number | undefined;
}
/** A label rounds: the kinds may overshoot their total by a gram. */
const kindsFit = ({ sugars_g, sucrose_g = 0, glucose_g = 0, fructose_g = 0 }: Kinds) =>
  sugars_g === undefined || sucrose_g + glucose_g + fructose_g <= sugars_g + 1;
const kindsWords = { error: 'glucose, fructose and sucrose together cannot exceed the sugars', path: ['sugars_g'] };

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
        measures: ownMeasures.optional(),
        source: source.optional(),
        note: note.optional(),
      })
      .refine(kindsFit, kindsWords)
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
  /**
   * The owner's own figures for an ingredient that comes with the program, with where they come from. Only what is given stands in for the
   * table's; nothing given takes them away again.
   */
  'pantry:figures': writes(
    z
      .strictObject({
        name,
        water_g: given,
        sugars_g: given,
        sucrose_g: given,
        glucose_g: given,
        fructose_g: given,
        measures: ownMeasures.optional(),
        source: source.optional(),
      })
      .refine(kindsFit, kindsWords),
    z.strictObject({ name: z.string(), isOwn: z.boolean() }),
  ),
  /** What is on hand of an ingredient and what it costs; null forgets it. Starting a jar takes from what is on hand. */
  'pantry:stock': writes(
    z.strictObject({
      name,
      onHand_g: z.number().min(0).max(1_000_000).nullable().optional(),
      price_per_kg: z.number().min(0).max(100_000).nullable().optional(),
      price_per_L: z.number().min(0).max(100_000).nullable().optional(),
    }),
    z.strictObject({
      name: z.string(),
      onHand_g: z.number().nullable(),
      price_per_kg: z.number().nullable(),
      price_per_L: z.number().nullable(),
    }),
  ),
  'pantry:remove': writes(z.strictObject({ ingredient: id }), z.strictObject({ ingredient: id })),
} as const;
