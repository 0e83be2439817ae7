import { OutOfDomain } from '#core/out-of-domain.ts';
import { type Addition, ingredientName, type Formula as JarFormula } from '#core/trial/formula.ts';
import type { Formula, FormulaAddition } from './formula.ts';

function perLitre(addition: Addition, base_mL: number): FormulaAddition {
  const { ingredient, mass_g, state, leftIn } = addition;
  return {
    ingredient: ingredientName(ingredient),
    amount_g_per_L: (1000 * mass_g) / base_mL,
    state,
    ...(leftIn === false ? { form: 'strained out before the end' } : {}),
    ...(typeof ingredient === 'string' ? {} : { composition: ingredient }),
  };
}

/**
 * A jar's formula in the recipe's words: amounts in grams per litre of base, so that jars of different size compare and scale.
 *
 * Method: each mass over the jar's base. What nobody said (cover, temperature) stays unsaid. Leaves out what was poured with the base
 * volume only (the maker's own measure, an addition's temperature).
 *
 * @param jar what the jar holds and how it is kept
 * @param base_mL base poured into it, more than 0 mL
 * @param baseName what the base is called
 * @throws OutOfDomain when base_mL is not above 0
 * @example formulaOfJar({ additions: [], days: 2, cover: null, temperature_C: null }, 800, 'base').days // 2
 */
export function formulaOfJar(jar: JarFormula, base_mL: number, baseName: string): Formula {
  if (!(base_mL > 0 && base_mL < Number.POSITIVE_INFINITY)) throw new OutOfDomain('base_mL', base_mL, 'more than 0 mL');
  return {
    base: { name: baseName },
    additions: jar.additions.map((addition) => perLitre(addition, base_mL)),
    days: jar.days,
    ...(jar.temperature_C === null ? {} : { temperature_C: jar.temperature_C }),
    ...(jar.cover === null ? {} : { cover: jar.cover }),
  };
}
