import { keepsGas } from '#core/ferment/closed-at-start.ts';
import { coldDoubt } from '#core/ferment/cold-doubt.ts';
import { type ColdStart, stillAirTimeConstant_h } from '#core/ferment/cold-start.ts';
import { jarSheet } from '#core/ferment/jar-sheet.ts';
import { ownWarming } from '#core/ferment/own-warming.ts';
import { slowStart } from '#core/ferment/slow-start.ts';
import { stillAir_W_per_m2K } from '#core/ferment/warming.ts';
import type { Formula } from '#core/trial/formula.ts';
import { phrase } from '#core/words/phrase.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { listBottlings } from '#store/rows/bottles.ts';
import type { Jar } from '#store/rows/jars.ts';
import type { TrialWhole } from '#store/rows/trials.ts';
import { alcoholOfBase, type KnownJar, sheetProblem } from './jar-input-of.ts';
import {
  eventsOf,
  pointsOf,
  type ReadingInTime,
  readingsInTime,
  sugarOfReading,
  temperaturesSinceStart,
} from './reading-points.ts';

type Answer = ValueOf<'sheets:ofJar'>;

interface JarInTrial {
  readonly jar: Jar;
  readonly trial: TrialWhole;
  readonly formula: Formula;
  readonly known: KnownJar;
}

function firstBubbles(kitchen: Kitchen, jar: Jar): number | null {
  return eventsOf(kitchen, jar).find(({ what }) => what === 'first-bubbles')?.hours ?? null;
}

/** Against the first bubbles of a jar that held nothing frozen, the control before others; null where one of the two was not noted. */
function slowStartOf(
  kitchen: Kitchen,
  { jar, trial }: JarInTrial,
  lost: { low: number; high: number | null },
): NonNullable<Answer['cold']>['slowStart'] {
  const own = firstBubbles(kitchen, jar);
  if (own === null) return null;
  const isFrozen = (level: string) =>
    trial.levelsWhole.find(({ id }) => id === level)?.formula.additions.some(({ state }) => state === 'frozen') ??
    false;
  const others = trial.jarsWhole
    .filter((other) => other.id !== jar.id && !isFrozen(other.level))
    .toSorted((a, b) => Number(b.isControl) - Number(a.isControl));
  for (const other of others) {
    const theirs = firstBubbles(kitchen, other);
    if (theirs === null) continue;
    const late_h = own - theirs;
    if (late_h <= 0) {
      const none = { low: 0, high: 0 };
      const sentence = phrase`Its first bubbles came no later than those of jar ${other.label}.`;
      return { against: other.label, late_h, cold_h: none, rest_h: none, sentence };
    }
    return { against: other.label, late_h, ...slowStart(late_h, { low: lost.low, high: lost.high ?? late_h }) };
  }
  return null;
}

function closingOf(
  isClosed: boolean,
  readings: readonly ReadingInTime[],
  total_g_per_L: number | null,
  asked: number | undefined,
): Answer['closing'] {
  if (asked !== undefined) return { sugar_g_per_L: asked, from: 'asked' };
  if (!isClosed) return null;
  const last = pointsOf(readings, sugarOfReading).at(-1);
  if (last !== undefined) return { sugar_g_per_L: last.value, from: 'reading' };
  return total_g_per_L === null ? null : { sugar_g_per_L: total_g_per_L, from: 'start' };
}

function coldOf(
  kitchen: Kitchen,
  whole: JarInTrial,
  thaw: ColdStart | null,
  own: ReturnType<typeof ownWarming>,
): Answer['cold'] {
  if (thaw === null) return null;
  const doubt = coldDoubt(thaw, own?.timeConstant_h ?? null);
  const still_h = stillAirTimeConstant_h(whole.known.input);
  return {
    hours: doubt.hoursToWithinOneDegree,
    lostHours: doubt.lostEquivalentHours,
    coefficient_W_per_m2K:
      own === null ? stillAir_W_per_m2K : (stillAir_W_per_m2K * still_h) / own.timeConstant_h.middle,
    own,
    slowStart: slowStartOf(kitchen, whole, doubt.lostEquivalentHours),
  };
}

/** One jar's sheet, calibrated by its own readings where two of them tell how fast it warms. */
export function sheetOfJar(kitchen: Kitchen, whole: JarInTrial, asked: number | undefined): Answer {
  const { jar, trial, formula, known } = whole;
  const { base, room, input } = known;
  const readings = readingsInTime(kitchen, jar);
  const own = ownWarming(temperaturesSinceStart(readings), room.temperature_C);
  const isClosed = keepsGas(trial.vessel, formula.cover);
  const sugar = base?.sugarNow_g_per_L ?? base?.sugarStart_g_per_L ?? null;
  const about = {
    bottled: listBottlings(kitchen.read, { jar: jar.id })[0] ?? null,
    room,
    isClosed,
    base:
      base === null
        ? null
        : {
            id: base.id,
            name: base.name,
            sugar:
              sugar === null
                ? null
                : ({ g_per_L: sugar, from: base.sugarNow_g_per_L === null ? 'start' : 'now' } as const),
            alcohol: alcoholOfBase(base),
          },
  };
  const unclosed = sheetProblem(known);
  if (unclosed !== null) return { ...about, sheet: null, problem: unclosed, closing: null, cold: null };
  const plain = jarSheet(input);
  const closing = closingOf(isClosed, readings, plain.sugar.total_g_per_L, asked);
  const closed =
    closing === null ? known : { ...known, input: { ...input, sealedWithSugar_g_per_L: closing.sugar_g_per_L } };
  const problem = sheetProblem(closed);
  if (problem !== null) return { ...about, sheet: null, problem, closing, cold: null };
  const sheet = jarSheet(closed.input, own?.timeConstant_h.middle);
  return { ...about, sheet, problem: null, closing, cold: coldOf(kitchen, whole, sheet.thaw, own) };
}
