import type { JarInput } from '#core/ferment/jar-input.ts';
import { jarProblem } from '#core/ferment/jar-problem.ts';
import { jarSheet } from '#core/ferment/jar-sheet.ts';
import type { Formula } from '#core/trial/formula.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { findBase } from '#store/bases.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { findTrial } from '#store/trials.ts';
import { found } from './found.ts';
import type { Handlers } from './handler.ts';
import { compositionOf, ownOf, ownPantry } from './whole-pantry.ts';

/** When nobody says how warm the room is. Common practice, no source. */
const usualRoom_C = 22;

type Level = ValueOf<'sheets:ofTrial'>['levels'][number];

/** The formula's additions with the owner's own ingredients written out, since the core knows only the built-in pantry. */
function writtenOut(kitchen: Kitchen, formula: Formula): JarInput['additions'] {
  const own = ownPantry(kitchen);
  return formula.additions.map(({ ingredient, mass_g, state, temperature_C }) => {
    const mine = typeof ingredient === 'string' ? ownOf(own, ingredient) : undefined;
    const composition = mine === undefined ? null : compositionOf(mine);
    const whole = mine === undefined || composition === null ? ingredient : { name: mine.name, ...composition };
    return { ingredient: whole, mass_g, state, ...(temperature_C === undefined ? {} : { temperature_C }) };
  });
}

export const sheetHandlers: Handlers<'sheets:ofTrial'> = {
  'sheets:ofTrial'(kitchen, { trial: id }) {
    const trial = found(findTrial(kitchen.read, id), 'trial', 'trial');
    const base = trial.base === null ? undefined : findBase(kitchen.read, trial.base.id);
    const sugar = base?.sugarNow_g_per_L ?? base?.sugarStart_g_per_L;
    const ambient_C = trial.held.temperature_C ?? base?.temperature_C ?? usualRoom_C;
    const levels = trial.levelsWhole.map(({ name, formula }): Level => {
      if (sugar == null) {
        const problem =
          base === undefined
            ? 'The plan names no base, so its sugar is not known. Start the base under Bases and choose it in the plan.'
            : `The sugar of “${base.name}” is not known. Enter what it started with, or a reading.`;
        return { level: name, sheet: null, problem };
      }
      const room_C = formula.temperature_C ?? ambient_C;
      const input: JarInput = {
        vessel: trial.vessel,
        base: {
          volume_mL: trial.baseEach_mL,
          temperature_C: base?.temperature_C ?? room_C,
          sugar_g_per_L: sugar,
          alcohol_pctVol: base?.alcohol_pctVol ?? 0,
        },
        additions: writtenOut(kitchen, formula),
        ambient_C: room_C,
      };
      const problem = jarProblem(input);
      return problem === null
        ? { level: name, sheet: jarSheet(input), problem: null }
        : { level: name, sheet: null, problem: problem.message };
    });
    return { base: base?.name ?? null, ambient_C, levels };
  },
};
