import { baseAlcohol } from '#core/ferment/base-alcohol.ts';
import { closedAtStart } from '#core/ferment/closed-at-start.ts';
import type { JarAddition, JarInput } from '#core/ferment/jar-input.ts';
import { jarProblem } from '#core/ferment/jar-problem.ts';
import { type JarSheet, jarSheet } from '#core/ferment/jar-sheet.ts';
import { ownJarIngredient } from '#core/ferment/own-jar-ingredient.ts';
import { sellingCaution, tapWaterCaution } from '#core/ferment/standing-cautions.ts';
import { findIngredient } from '#core/pantry/find-ingredient.ts';
import type { Formula } from '#core/trial/formula.ts';
import { phrase } from '#core/words/phrase.ts';
import { CautionList } from '#renderer/parts/caution/caution-list.tsx';
import { cautionsOfSheets } from '#renderer/parts/caution/cautions-of-sheets.ts';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { type PlanWork, usePlan } from './plan-context.ts';
import { words } from './words.ts';

const room_C = 22;

interface NamedSheet {
  readonly level: string;
  readonly sheet: JarSheet;
}

type Pantry = ValueOf<'pantry:list'>['ingredients'];

/** The formula's additions as the sheet takes them: the owner's own written out; null where nobody knows what one is made of. */
function additionsOf(formula: Formula, pantry: Pantry): JarInput['additions'] | null {
  const known = formula.additions.flatMap(({ ingredient, mass_g, state }): JarAddition[] => {
    if (typeof ingredient !== 'string') return [{ ingredient, mass_g, state }];
    const asked = ingredient.trim().toLowerCase();
    const mine = pantry.find(
      ({ id, name, aliases }) => id !== null && [name, ...aliases].some((one) => one.toLowerCase() === asked),
    );
    const whole = mine === undefined ? (findIngredient(asked)?.name ?? null) : ownJarIngredient(mine);
    return whole === null ? [] : [{ ingredient: whole, mass_g, state }];
  });
  return known.length === formula.additions.length ? known : null;
}

/** A sheet for each jar whose contents are known. A base of unknown sugar leaves sugar and alcohol unknown, not zero. */
function sheetsOf({ judged }: PlanWork, pantry: Pantry): NamedSheet[] {
  const { plan, planned, base } = judged;
  if (plan.baseEach_mL <= 0) return [];
  return plan.levels.flatMap((level, position): NamedSheet[] => {
    const formula = planned.formulas[position];
    if (formula == null) return [];
    const additions = additionsOf(formula, pantry);
    if (additions === null) return [];
    const ambient_C = formula.temperature_C ?? room_C;
    const input: JarInput = {
      vessel: plan.vessel,
      base: {
        volume_mL: plan.baseEach_mL,
        temperature_C: base?.temperature_C ?? ambient_C,
        sugar_g_per_L: base?.sugarNow_g_per_L ?? base?.sugarStart_g_per_L ?? null,
        alcohol_pctVol: base === null ? 0 : (baseAlcohol(base)?.pctVol ?? 0),
      },
      additions,
      ambient_C,
    };
    return jarProblem(input) === null
      ? [{ level: level.name, sheet: jarSheet(closedAtStart(input, formula.cover)) }]
      : [];
  });
}

/** What each jar comes to before it ferments: how full, how sweet; and the cautions that go with it. */
export function PlanSheets({ pantry }: { readonly pantry: Pantry }) {
  const work = usePlan();
  const { measures } = work;
  const sheets = sheetsOf(work, pantry);
  return (
    <div className="subsection">
      {sheets.length === 0 ? null : (
        <>
          <h3>
            <Explained words={words.eachJar} />
          </h3>
          <ul className="plan-sheets figures">
            {sheets.map(({ level, sheet }) => (
              <li key={level}>
                <strong>{level}</strong>{' '}
                <span className="soft">{phrase`${Math.round(sheet.fillFraction * 100)} % full, ${
                  sheet.sugar.total_g_per_L === null
                    ? words.sugarUnknown
                    : phrase`${measures.sugar(sheet.sugar.total_g_per_L)} sugar at the start`
                }`}</span>
              </li>
            ))}
          </ul>
        </>
      )}
      <h3>
        <Explained words={words.cautions} />
      </h3>
      <CautionList
        cautions={[...cautionsOfSheets(sheets, work.judged.plan.vessel), tapWaterCaution(), sellingCaution()]}
      />
    </div>
  );
}
