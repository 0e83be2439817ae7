import { equivalentHours } from '#core/ferment/equivalent-hours.ts';
import { readingCautions } from '#core/ferment/reading-cautions.ts';
import { sugarAt, sugarDecline } from '#core/ferment/sugar-decline.ts';
import { sugarSolution } from '#core/ferment/sugar-solution.ts';
import { timeToSweetness } from '#core/ferment/time-to-sweetness.ts';
import { OutOfDomain } from '#core/out-of-domain.ts';
import { hoursBetween } from '#core/trial/moment.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { type Jar, jarsOfTrial, readingsOfJar } from '#store/jars.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { found } from './found.ts';
import type { Handlers } from './handler.ts';

type Course = ValueOf<'course:read'>['jars'][number];
type Point = Course['brix'][number];

const curvePoints = 41;

/** °Bx of a reading: as read, or worked out from its specific gravity; null outside the tables. */
function brixOf(reading: { brix: number | null; sg: number | null }): number | null {
  if (reading.brix !== null) return reading.brix;
  if (reading.sg === null) return null;
  try {
    return sugarSolution({ sg: reading.sg }).brix;
  } catch (error) {
    if (error instanceof OutOfDomain) return null;
    throw error;
  }
}

/** Two thermometers read at one moment count as their mean. */
function atOneTimeEach(points: readonly Point[]): { hours: number; temperature_C: number }[] {
  return [...Map.groupBy(points, ({ hours }) => hours)].map(([hours, own]) => ({
    hours,
    temperature_C: own.reduce((sum, { value }) => sum + value, 0) / own.length,
  }));
}

function courseOf(kitchen: Kitchen, jar: Jar, wanted: number | undefined): Course {
  const start = jar.startedAt ?? jar.plannedStart;
  const readings = readingsOfJar(kitchen.read, jar.id).map((reading) => ({
    ...reading,
    hours: hoursBetween(start, reading.takenAt),
  }));
  const points = (read: (reading: (typeof readings)[number]) => number | null): Point[] =>
    readings.flatMap((reading) => {
      const value = read(reading);
      return value === null ? [] : [{ hours: reading.hours, value }];
    });
  const brix = points(brixOf);
  const temperatures = points(({ temperature_C }) => temperature_C);
  const sugars = brix.map(({ hours, value }) => ({ hours, sugar: value }));
  const decline = sugarDecline(sugars);
  const sweet = wanted === undefined || wanted <= 0 ? null : timeToSweetness(sugars, wanted);
  const last = Math.max(0, ...brix.map(({ hours }) => hours));
  return {
    jar: jar.id,
    label: jar.label,
    level: jar.levelName,
    brix,
    ph: points(({ ph }) => ph),
    temperature_C: temperatures,
    fall: decline.ok
      ? {
          model: decline.value.fitted.model.name,
          residualSd: decline.value.residualSd,
          curve: Array.from({ length: curvePoints }, (_, step) => {
            const hours = (last * step) / (curvePoints - 1);
            return { hours, value: sugarAt(decline.value, hours) };
          }),
        }
      : null,
    sweetEnough: sweet?.ok ? { hours: sweet.value.hours, low: sweet.value.low, high: sweet.value.high } : null,
    equivalentHours: temperatures.length === 0 ? null : equivalentHours(atOneTimeEach(temperatures)),
    cautions: readingCautions(points(({ ph }) => ph).map(({ hours, value }) => ({ hours, pH: value }))),
    reasons: [...(decline.ok ? [] : [decline.reason]), ...(sweet === null || sweet.ok ? [] : [sweet.reason])],
  };
}

export const courseHandlers: Handlers<'course:read'> = {
  'course:read'(kitchen, { trial, wanted_brix }) {
    found(kitchen.read.row('trials', trial), 'trial', 'trial');
    return { jars: jarsOfTrial(kitchen.read, trial).map((jar) => courseOf(kitchen, jar, wanted_brix)) };
  },
};
