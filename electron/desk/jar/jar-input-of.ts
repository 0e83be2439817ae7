import { type BaseAlcohol, baseAlcohol } from '#core/ferment/base-alcohol.ts';
import type { JarInput } from '#core/ferment/jar-input.ts';
import { jarProblem } from '#core/ferment/jar-problem.ts';
import { ownJarIngredient } from '#core/ferment/own-jar-ingredient.ts';
import type { Formula } from '#core/trial/formula.ts';
import { phrase } from '#core/words/phrase.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { findBase } from '#store/rows/bases.ts';
import type { TrialWhole } from '#store/rows/trials.ts';
import { ownOf, ownPantry } from '../pantry/whole-pantry.ts';

/** When nobody says how warm the room is. Common practice, no source. */
export const usualRoom_C = 22;

type Base = ValueOf<'bases:list'>['bases'][number];

/** How warm a jar stands, and who said so. */
export interface Room {
  readonly temperature_C: number;
  readonly from: 'plan' | 'base' | 'usual';
}

/** A jar as its sheet wants it, with where its numbers come from. */
export interface KnownJar {
  readonly input: JarInput;
  readonly room: Room;
  readonly base: Base | null;
  /** An ingredient of the owner's whose make-up nobody gave. */
  readonly unknownIngredient: string | null;
}

/** What a formula says of the room, else the trial, else its base. */
export function roomOf(formula: Formula, trial: TrialWhole, base: Base | null): Room {
  const planned = formula.temperature_C ?? trial.held.temperature_C;
  if (planned !== null) return { temperature_C: planned, from: 'plan' };
  if (base?.temperature_C != null) return { temperature_C: base.temperature_C, from: 'base' };
  return { temperature_C: usualRoom_C, from: 'usual' };
}

export function baseOfTrial(kitchen: Kitchen, trial: TrialWhole): Base | null {
  return trial.base === null ? null : (findBase(kitchen.read, trial.base.id) ?? null);
}

/** The sugar of a base as it is now, else as it was started; null when nobody said. */
export function sugarOfBase(base: Base | null): number | null {
  return base?.sugarNow_g_per_L ?? base?.sugarStart_g_per_L ?? null;
}

/** The alcohol of a base as given, else by its own sugars; null when neither says. */
export function alcoholOfBase(base: Base | null): BaseAlcohol | null {
  return base === null ? null : baseAlcohol(base);
}

/**
 * The jar that a formula makes in a trial, with the owner's own ingredients written out, since the core knows only the built-in pantry.
 *
 * @param base_mL what is poured into this jar
 */
export function jarInputOf(kitchen: Kitchen, trial: TrialWhole, formula: Formula, base_mL: number): KnownJar {
  const base = baseOfTrial(kitchen, trial);
  const room = roomOf(formula, trial, base);
  const own = ownPantry(kitchen);
  let unknownIngredient: string | null = null;
  const additions = formula.additions.map(({ ingredient, mass_g, state, temperature_C }) => {
    const mine = typeof ingredient === 'string' ? ownOf(own, ingredient) : undefined;
    const written = mine === undefined ? null : ownJarIngredient(mine);
    if (mine !== undefined && written === null) unknownIngredient = mine.name;
    const whole = written ?? ingredient;
    return { ingredient: whole, mass_g, state, ...(temperature_C === undefined ? {} : { temperature_C }) };
  });
  return {
    base,
    room,
    unknownIngredient,
    input: {
      vessel: trial.vessel,
      base: {
        volume_mL: base_mL,
        temperature_C: base?.temperature_C ?? room.temperature_C,
        sugar_g_per_L: sugarOfBase(base),
        alcohol_pctVol: alcoholOfBase(base)?.pctVol ?? 0,
      },
      additions,
      ambient_C: room.temperature_C,
    },
  };
}

/** What a sheet can't be worked out without, with the way out; null when nothing is in the way. */
export function sheetProblem({ input, unknownIngredient }: KnownJar): string | null {
  if (unknownIngredient !== null) {
    return phrase`Nobody has said what “${unknownIngredient}” is made of. Give its water and sugars in the Pantry.`;
  }
  return jarProblem(input)?.message ?? null;
}
