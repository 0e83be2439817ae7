import type { CautionCode } from '#core/ferment/caution.ts';
import { jarProblem } from '#core/ferment/jar-problem.ts';
import { type JarSheet, jarSheet } from '#core/ferment/jar-sheet.ts';
import { Caution } from '#renderer/parts/caution/caution.tsx';
import { type PlanWork, usePlan } from './plan-context.ts';
import { words } from './words.ts';

/** The cautions worth saying while planning; the rest stands with the jars. */
const said: readonly CautionCode[] = [
  'pressure-above-rating',
  'pressure-glass-limit',
  'vessel-unrated',
  'alcohol-line',
  'preserved-juice',
  'honey-infants',
  'allergens',
];
const room_C = 22;

interface NamedSheet {
  readonly name: string;
  readonly sheet: JarSheet;
}

/** A sheet for each jar whose base's sugar and contents are known. */
function sheetsOf({ judged }: PlanWork): NamedSheet[] {
  const { plan, planned, base } = judged;
  const sugar = base?.sugarNow_g_per_L ?? base?.sugarStart_g_per_L;
  if (sugar == null || plan.baseEach_mL <= 0) return [];
  return plan.levels.flatMap((level, position): NamedSheet[] => {
    const formula = planned.formulas[position];
    if (formula == null) return [];
    const ambient_C = formula.temperature_C ?? room_C;
    const input = {
      vessel: plan.vessel,
      base: {
        volume_mL: plan.baseEach_mL,
        temperature_C: base?.temperature_C ?? ambient_C,
        sugar_g_per_L: sugar,
        ...(base?.alcohol_pctVol == null ? {} : { alcohol_pctVol: base.alcohol_pctVol }),
      },
      additions: formula.additions,
      ambient_C,
    };
    return jarProblem(input) === null ? [{ name: level.name, sheet: jarSheet(input) }] : [];
  });
}

/** What each jar comes to before it ferments: how full, how sweet; and the cautions that go with it. */
export function PlanSheets() {
  const work = usePlan();
  const { measures } = work;
  const sheets = sheetsOf(work);
  if (sheets.length === 0) return null;
  const cautions = new Map(
    sheets.flatMap(({ sheet }) => sheet.cautions.map((caution) => [caution.code, caution] as const)),
  );
  return (
    <div className="subsection">
      <h3>{words.eachJar}</h3>
      <ul className="plan-sheets figures">
        {sheets.map(({ name, sheet }) => (
          <li key={name}>
            <strong>{name}</strong>{' '}
            <span className="soft">
              {Math.round(sheet.fillFraction * 100)} % full
              {sheet.sugar.total_g_per_L === null
                ? ''
                : `, ${measures.sugar(sheet.sugar.total_g_per_L)} sugar at the start`}
            </span>
          </li>
        ))}
      </ul>
      {said.flatMap((code) => {
        const caution = cautions.get(code);
        return caution === undefined
          ? []
          : [
              <Caution key={code} basis={caution.basis}>
                {caution.message}
              </Caution>,
            ];
      })}
    </div>
  );
}
