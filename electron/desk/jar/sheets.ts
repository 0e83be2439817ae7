import { closedAtStart } from '#core/ferment/closed-at-start.ts';
import { jarSheet } from '#core/ferment/jar-sheet.ts';
import { phrase } from '#core/words/phrase.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { findJar } from '#store/rows/jars.ts';
import { findTrial } from '#store/rows/trials.ts';
import { found } from '../found.ts';
import type { Handlers } from '../handler.ts';
import { jarInputOf, type KnownJar, sheetProblem, usualRoom_C } from './jar-input-of.ts';
import { sheetOfJar } from './sheet-of-jar.ts';

type Level = ValueOf<'sheets:ofTrial'>['levels'][number];

/** What a sheet lacks without the base's sugar, with the way out. */
function sugarLack({ base, input }: KnownJar): string | null {
  if (input.base.sugar_g_per_L !== null) return null;
  return base === null
    ? phrase`The plan names no base, so its sugar is not known. Start the base under Bases and choose it in the plan.`
    : phrase`The sugar of “${base.name}” is not known. Enter what it started with, or a reading.`;
}

export const sheetHandlers: Handlers<'sheets:ofTrial' | 'sheets:ofJar'> = {
  'sheets:ofTrial'(kitchen, { trial: id }) {
    const trial = found(findTrial(kitchen.read, id), 'trial', 'trial');
    let base: string | null = null;
    let ambient_C = trial.held.temperature_C ?? usualRoom_C;
    const levels = trial.levelsWhole.map(({ name, formula }): Level => {
      const known = jarInputOf(kitchen, trial, formula, trial.baseEach_mL);
      base = known.base?.name ?? null;
      ambient_C = trial.held.temperature_C ?? known.base?.temperature_C ?? usualRoom_C;
      const problem = sheetProblem(known);
      return {
        level: name,
        sheet: problem === null ? jarSheet(closedAtStart(known.input, formula.cover)) : null,
        problem: problem ?? sugarLack(known),
      };
    });
    return { base, ambient_C, levels };
  },
  'sheets:ofJar'(kitchen, { jar: id, sealedWithSugar_g_per_L }) {
    const jar = found(findJar(kitchen.read, id), 'jar', 'jar');
    const trial = found(findTrial(kitchen.read, jar.trial), 'trial', 'jar');
    const level = found(
      trial.levelsWhole.find((one) => one.id === jar.level),
      'level',
      'jar',
    );
    const known = jarInputOf(kitchen, trial, level.formula, jar.base_mL);
    return sheetOfJar(kitchen, { jar, trial, formula: level.formula, known }, sealedWithSugar_g_per_L);
  },
};
