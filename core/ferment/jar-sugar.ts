import type { Reason } from '#core/reason.ts';
import { grams, type Millilitres, percentVolume } from '#core/units/branded.ts';
import { phrase } from '#core/words/phrase.ts';
import { alcoholByVolume_pct, ballingYield, hexoseYield, sucroseYield, sugarToHalfPercent_g_per_L } from './alcohol.ts';
import type { JarFigures } from './jar-figures.ts';
import type { JarInput } from './jar-input.ts';
import { knownSugars } from './known-sugars.ts';
import type { ResolvedAddition } from './resolve-addition.ts';
import { sugarSolution } from './sugar-solution.ts';

/** The sugar of a jar and the alcohol it could become; where a fruit's sugar is unknown, `null` and a reason. */
export function jarSugar(
  { base }: JarInput,
  additions: readonly ResolvedAddition[],
  volume_mL: Millilitres,
  reasons: Reason[],
): Pick<JarFigures, 'sugar' | 'alcohol'> {
  const alcoholNow = percentVolume(((base.alcohol_pctVol ?? 0) * base.volume_mL) / volume_mL);
  const sugarLeftToHalfPercent_g_per_L = sugarToHalfPercent_g_per_L(alcoholNow);
  let sucrose_g = 0;
  let hexose_g = 0;
  const unknown = new Set<string>();
  for (const { name, mass_g, composition } of additions) {
    const sugars = knownSugars(composition);
    if (sugars === null && mass_g > 0) unknown.add(name);
    if (sugars === null) continue;
    sucrose_g += (mass_g * sugars.sucrose_g) / 100;
    hexose_g += (mass_g * sugars.hexose_g) / 100;
  }
  if (unknown.size > 0) {
    const needs = phrase`The sugar of ${[...unknown].join(', ')} per 100 g: the food table has none.`;
    for (const path of [['sugar'], ['alcohol']]) reasons.push({ path, code: 'composition-unknown', needs });
    return {
      sugar: { added_g: null, total_g_per_L: null, brix: null, sg: null },
      alcohol: { ifAllSugar_pctVol: null, ifYeastYield_pctVol: null, sugarLeftToHalfPercent_g_per_L },
    };
  }
  const added_g = sucrose_g + hexose_g;
  if (base.sugar_g_per_L === null) {
    const needs = phrase`The sugar of the base, in g/L: as it was started, or as it is now.`;
    for (const path of [['sugar'], ['alcohol']]) reasons.push({ path, code: 'base-sugar-unknown', needs });
    return {
      sugar: { added_g, total_g_per_L: null, brix: null, sg: null },
      alcohol: { ifAllSugar_pctVol: null, ifYeastYield_pctVol: null, sugarLeftToHalfPercent_g_per_L },
    };
  }
  const baseSugar_g = (base.sugar_g_per_L * base.volume_mL) / 1000;
  const total_g_per_L = (1000 * (baseSugar_g + added_g)) / volume_mL;
  const { brix, sg } = sugarSolution({ sugar_g_per_L: total_g_per_L });
  const most_g = (baseSugar_g + sucrose_g) * sucroseYield.ethanol + hexose_g * hexoseYield.ethanol;
  const yeast_g = (baseSugar_g + added_g) * ballingYield.ethanol;
  return {
    sugar: { added_g, total_g_per_L, brix, sg },
    alcohol: {
      ifAllSugar_pctVol: alcoholNow + alcoholByVolume_pct(grams(most_g), volume_mL),
      ifYeastYield_pctVol: alcoholNow + alcoholByVolume_pct(grams(yeast_g), volume_mL),
      sugarLeftToHalfPercent_g_per_L,
    },
  };
}
