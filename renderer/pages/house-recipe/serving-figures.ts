import { sugarSolution } from '#core/ferment/sugar-solution.ts';
import { OutOfDomain } from '#core/out-of-domain.ts';
import { formulaOfJar } from '#core/recipe/formula-of-jar.ts';
import { pricePerKg } from '#core/recipe/price-per-kg.ts';
import { type Serving, serving } from '#core/recipe/serving.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { knownAddition, type PantryRow } from './known-additions.ts';
import type { Version } from './use-make.ts';

export interface BaseFigures {
  readonly name: string;
  readonly sugar_g_per_L: number | null;
  readonly price_per_L: number | null;
}

/** Cost and sugar of a serving from what is put in, with what this kitchen knows of each addition. */
export function servingFigures(
  version: Pick<Version, 'formula' | 'base_mL'>,
  serving_mL: number,
  base: BaseFigures,
  pantry: readonly PantryRow[],
): Serving {
  const plain = formulaOfJar(version.formula, version.base_mL, base.name);
  const known = version.formula.additions.map((one) => knownAddition(one, pantry));
  const per_kg: Record<string, number> = {};
  const additions = plain.additions.map((one, place) => {
    const { row = null, composition = null } = known[place] ?? {};
    const price = row === null ? null : pricePerKg(row, composition);
    if (price !== null) per_kg[one.ingredient] = price;
    return composition === null ? one : { ...one, composition };
  });
  return serving(
    {
      ...plain,
      base: { name: base.name, ...(base.sugar_g_per_L === null ? {} : { sugar_g_per_L: base.sugar_g_per_L }) },
      additions,
    },
    serving_mL,
    { ...(base.price_per_L === null ? {} : { base_per_L: base.price_per_L }), per_kg },
  );
}

type JarPage = ValueOf<'jars:open'>;

export interface LastReading {
  readonly jar: string;
  readonly reading: JarPage['readings'][number];
  /** As if it were all sugar; null where it is lighter than that can be. */
  readonly sugar_g_per_L: number | null;
}

/** The latest reading of sugar in the jars that a recipe comes from; null without any. */
export function lastReading(jars: readonly JarPage[]): LastReading | null {
  const read = jars.flatMap(({ jar, readings }) =>
    readings.filter(({ brix, sg }) => brix !== null || sg !== null).map((reading) => ({ jar: jar.label, reading })),
  );
  const last = read.toSorted((a, b) => a.reading.takenAt.localeCompare(b.reading.takenAt)).at(-1);
  if (last === undefined) return null;
  const { brix, sg } = last.reading;
  try {
    const { sugar_g_per_L } = sugarSolution(brix === null ? { sg: sg ?? 0 } : { brix });
    return { ...last, sugar_g_per_L };
  } catch (error) {
    if (error instanceof OutOfDomain) return { ...last, sugar_g_per_L: null };
    throw error;
  }
}
