import { z } from 'zod';
import { additionStates, covers, vesselKinds } from '#core/trial/formula.ts';
import { line, mass_g, name, temperature_C } from './fields.ts';

// What a jar holds and stands in, as every domain of the contract writes it.

const per100 = z.number().min(0).max(100);

export const ownIngredient = z
  .strictObject({
    name,
    water_g: per100,
    sugars_g: per100,
    sucrose_g: per100.optional(),
    glucose_g: per100.optional(),
    fructose_g: per100.optional(),
    fibre_g: per100.optional(),
    protein_g: per100.optional(),
    fat_g: per100.optional(),
    ash_g: per100.optional(),
  })
  .refine(
    ({ water_g, sugars_g, fibre_g = 0, protein_g = 0, fat_g = 0, ash_g = 0 }) =>
      water_g + sugars_g + fibre_g + protein_g + fat_g + ash_g <= 101,
    {
      error: 'its parts together cannot exceed 100 g in 100 g',
      path: ['water_g'],
    },
  );

export const addition = z.strictObject({
  ingredient: z.union([name, ownIngredient]),
  mass_g,
  state: z.enum(additionStates),
  temperature_C: temperature_C.optional(),
  asWritten: line(200).optional(),
  leftIn: z.boolean().optional(),
});

export const additions = z.array(addition).max(40);

export const cover = z.enum(covers);

export const vessel = z.strictObject({
  kind: z.enum(vesselKinds),
  capacity_mL: z.number().positive().max(1_000_000),
  diameter_mm: z.number().min(1).max(5000).optional(),
  ratedGauge_bar: z.number().positive().max(100).optional(),
});

export const formula = z.strictObject({
  additions,
  days: z.number(),
  cover: cover.nullable(),
  temperature_C: z.number().nullable(),
});
