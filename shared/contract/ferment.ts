import { z } from 'zod';
import { cautionCodes } from '#core/ferment/caution.ts';
import { equivalentHours } from '#core/ferment/equivalent-hours.ts';
import { vesselKinds } from '#core/ferment/jar-input.ts';
import { jarProblem } from '#core/ferment/jar-problem.ts';
import { strengthMembers, strengthProblem } from '#core/ferment/strength-problem.ts';
import { OutOfDomain } from '#core/out-of-domain.ts';
import { name } from './fields.ts';
import { reason } from './reason.ts';
import { computes } from './request.ts';

// The ferment's arithmetic, as screens and scripts ask for it: no store needed. Ranges are the core's own, so that one
// sentence says them everywhere.

const finite = z.number();
const per100g = z.number();

const ownIngredient = z.strictObject({
  name,
  water_g: per100g,
  /** `null`: nobody knows, and the sheet says so. */
  sugars_g: per100g.nullable(),
  sucrose_g: per100g.nullish(),
  glucose_g: per100g.nullish(),
  fructose_g: per100g.nullish(),
  fibre_g: per100g.nullish(),
  protein_g: per100g.nullish(),
  fat_g: per100g.nullish(),
  ash_g: per100g.nullish(),
});

/** What goes into a jar beside the base. */
export const jarAddition = z.strictObject({
  ingredient: z.union([name, ownIngredient]),
  mass_g: finite,
  state: z.enum(['fresh', 'frozen', 'liquid']),
  temperature_C: finite.optional(),
});

export const vessel = z.strictObject({
  kind: z.enum(vesselKinds),
  capacity_mL: finite,
  diameter_mm: finite.optional(),
  ratedGauge_bar: finite.optional(),
});

export const jarInput = z
  .strictObject({
    vessel,
    base: z.strictObject({
      volume_mL: finite,
      temperature_C: finite,
      sugar_g_per_L: finite,
      alcohol_pctVol: finite.default(0),
    }),
    additions: z.array(jarAddition).max(100),
    ambient_C: finite,
    sealedWithSugar_g_per_L: finite.optional(),
  })
  .superRefine((input, context) => {
    const problem = jarProblem(input);
    if (problem) {
      context.addIssue({
        code: 'custom',
        message: problem.message,
        path: [...problem.path],
        params: { code: problem.code },
      });
    }
  });

export const caution = z.strictObject({ code: z.enum(cautionCodes), message: z.string(), basis: z.string() });

export const jarSheet = z.strictObject({
  volume_mL: finite,
  fillFraction: finite,
  headspace_mL: finite,
  sugar: z.strictObject({
    added_g: finite.nullable(),
    total_g_per_L: finite.nullable(),
    brix: finite.nullable(),
    sg: finite.nullable(),
  }),
  alcohol: z.strictObject({
    ifAllSugar_pctVol: finite.nullable(),
    ifYeastYield_pctVol: finite.nullable(),
    sugarLeftToHalfPercent_g_per_L: finite,
  }),
  carbonation: z
    .strictObject({ volumes: finite, gauge_bar: z.strictObject({ ambient: finite, at35: finite }) })
    .nullable(),
  thaw: z
    .strictObject({
      mix_C: finite,
      ice_g: finite,
      hoursToWithinOneDegree: finite,
      lostEquivalentHours: z.strictObject({ low: finite, high: finite, reference_C: finite }),
    })
    .nullable(),
  cautions: z.array(caution).readonly(),
  reasons: z.array(reason).readonly(),
});

/** Outside, nothing about a solution can be said: what is looked at next would not know it. */
const solutionTemperature_C = z.number().min(0, { abort: true }).max(80, { abort: true }).default(20);

/** Lets the core's own sentence refuse what it cannot compute. */
function coreAccepts(compute: () => unknown, context: z.RefinementCtx, path: string[]): void {
  try {
    compute();
  } catch (error) {
    if (!(error instanceof OutOfDomain)) throw error;
    context.addIssue({ code: 'custom', message: error.message, path });
  }
}

const strengthWords = strengthMembers.join(', ');

/** One strength of a sugar solution: exactly one of the three. */
export const sugarStrength = z
  .strictObject({
    brix: finite.optional(),
    sg: finite.optional(),
    sugar_g_per_L: finite.optional(),
    temperature_C: solutionTemperature_C,
  })
  .superRefine((input, context) => {
    const given = strengthMembers.filter((member) => input[member] !== undefined);
    const [member, second] = given;
    const value = member === undefined ? undefined : input[member];
    if (member === undefined || value === undefined) {
      context.addIssue({ code: 'custom', message: `give one of ${strengthWords}`, path: ['brix'] });
    } else if (second !== undefined) {
      const both = `${given.slice(0, -1).join(', ')} and ${given.at(-1)}`;
      context.addIssue({
        code: 'custom',
        message: `one strength is enough, and this gives ${both}; give only one of ${strengthWords}`,
        path: [second],
      });
    } else {
      const problem = strengthProblem(member, value, input.temperature_C);
      if (problem !== null) context.addIssue({ code: 'custom', message: problem, path: [member] });
    }
  });

export const fermentRequests = {
  /** Volume, sugar, alcohol, pressure, cold start and cautions of one jar. */
  'jar:sheet': computes(jarInput, jarSheet),
  /** One strength of a sugar solution in all the others. */
  'ferment:convert': computes(
    sugarStrength,
    z.strictObject({ brix: finite, sg: finite, sgInAir: finite, sugar_g_per_L: finite, density_kg_per_m3: finite }),
  ),
  /** Titratable acidity from a titration. */
  'ferment:acidity': computes(
    z.strictObject({
      titrant_mL: z.number().min(0).max(1000),
      normality: z.number().min(0.001).max(2),
      sample_mL: z.number().min(0.001).max(1000),
      acid: z.enum(['lactic', 'acetic', 'citric', 'malic', 'tartaric']),
    }),
    z.strictObject({ g_per_L: finite, meq_per_L: finite }),
  ),
  /** Hours at one temperature that would have done as much as a log of changing ones. */
  'ferment:equivalentHours': computes(
    z
      .strictObject({
        log: z
          .array(z.strictObject({ hours: z.number().min(0).max(100_000), temperature_C: z.number().min(-40).max(110) }))
          .min(1)
          .max(10_000),
        reference_C: z.number().min(5).max(45).default(22),
      })
      .superRefine(({ log, reference_C }, context) => {
        coreAccepts(() => equivalentHours(log, reference_C), context, ['log']);
      }),
    z.strictObject({ low: finite, middle: finite, high: finite }),
  ),
} as const;
