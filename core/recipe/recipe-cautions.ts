import { type Caution, type CautionCode, caution } from '#core/ferment/caution.ts';
import type { JarInput } from '#core/ferment/jar-input.ts';
import { jarProblem } from '#core/ferment/jar-problem.ts';
import { jarSheet } from '#core/ferment/jar-sheet.ts';
import { pressureCautions } from '#core/ferment/pressure-cautions.ts';
import { sellingCaution, tapWaterCaution } from '#core/ferment/standing-cautions.ts';
import { phrase } from '#core/words/phrase.ts';

/** What is about one jar on one day, not about a drink that is made again. */
const ofTheJar: readonly CautionCode[] = ['overfull', 'headspace-froth', 'cold-start', 'sugar-at-closing'];
const ofAlcohol: readonly CautionCode[] = ['alcohol-line', 'alcohol-bound', 'alcohol-unknown'];

/** What the jar alone can't tell. */
export interface KnownOfRecipe {
  /** False when the sugar of the base or of an addition is unknown: then no bound on alcohol is given. */
  readonly isSugarKnown: boolean;
  /** Allergens of ingredients that are the owner's own. */
  readonly ownAllergens: readonly string[];
}

function sheetCautions(jar: JarInput): readonly Caution[] {
  if (jarProblem(jar) === null) return jarSheet(jar).cautions;
  const bare = { ...jar, additions: [] };
  return jarProblem(bare) === null ? jarSheet(bare).cautions : pressureCautions(jar.vessel, null);
}

/**
 * The usual cautions that belong on a house recipe: closed vessels, alcohol, mould, allergens, acidity, who should ask first, selling.
 *
 * Method: those of the jar's sheet, without what concerns one jar on one day; then the owner's own allergens and the one on selling.
 * Leaves out what is measured while it ferments. It never says that something is safe.
 *
 * @param jar the recipe as one jar; additions that nobody knows are left out of it and said in `known`
 * @example recipeCautions(jar, { isSugarKnown: true, ownAllergens: ['nuts'] }).map(({ code }) => code)
 */
export function recipeCautions(jar: JarInput, known: KnownOfRecipe): Caution[] {
  const found = sheetCautions(jar).filter(
    ({ code }) => !ofTheJar.includes(code) && (known.isSugarKnown || !ofAlcohol.includes(code)),
  );
  const alcohol = known.isSugarKnown
    ? []
    : [
        caution(
          'alcohol-unknown',
          phrase`How much alcohol it can reach is unknown: nobody has given the sugar of the base or of an addition. Whoever avoids alcohol should be told.`,
          phrase`US TTB, 27 CFR parts 16 and 25 draw a line at ${0.5} % vol; your country may differ`,
        ),
      ];
  const allergens =
    known.ownAllergens.length === 0
      ? []
      : [
          caution(
            'allergens',
            phrase`Brings ${known.ownAllergens.join(', ')}: name it on the label.`,
            phrase`Regulation (EU) No 1169/2011, Annex II`,
          ),
        ];
  return [...found, ...alcohol, ...allergens, tapWaterCaution(), sellingCaution()];
}
