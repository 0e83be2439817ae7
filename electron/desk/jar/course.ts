import { declineBand } from '#core/ferment/decline-band.ts';
import { equivalentHours } from '#core/ferment/equivalent-hours.ts';
import { readingCautions } from '#core/ferment/reading-cautions.ts';
import { sugarDecline } from '#core/ferment/sugar-decline.ts';
import { timeToSweetness } from '#core/ferment/time-to-sweetness.ts';
import { hoursBetween } from '#core/trial/moment.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { type Jar, jarsOfTrial } from '#store/rows/jars.ts';
import { findTrial, type TrialWhole } from '#store/rows/trials.ts';
import { found } from '../found.ts';
import type { Handlers } from '../handler.ts';
import { baseOfTrial, type Room, roomOf } from './jar-input-of.ts';
import { brixOf, eventsOf, pointsOf, readingsInTime, temperaturesSinceStart } from './reading-points.ts';

type Course = ValueOf<'course:read'>['jars'][number];

const curvePoints = 41;

/** How long a jar stood until it left the shelf, or until now, in hours and in hours at 22 °C. */
function stoodOf(
  jar: Jar,
  now: Date,
  log: readonly { hours: number; temperature_C: number }[],
  room: Room,
): Course['stood'] {
  if (jar.startedAt === null) return null;
  const [first] = [jar.pulledAt, jar.strainedAt, jar.discardedAt].filter((moment) => moment !== null).toSorted();
  const end = first ?? now.toISOString();
  const hours = Math.max(0, hoursBetween(jar.startedAt, end));
  const inside = log.filter((one) => one.hours <= hours);
  const last = inside.at(-1);
  // Between the last reading and the end nobody looked: it is taken to have stayed as warm.
  const held = { hours, temperature_C: last?.temperature_C ?? room.temperature_C };
  const whole = last !== undefined && last.hours >= hours ? inside : [...inside, held];
  return { hours, equivalent: equivalentHours(whole), from: last === undefined ? room.from : 'readings' };
}

interface Around {
  readonly kitchen: Kitchen;
  readonly trial: TrialWhole;
  readonly drink: 'kombucha' | 'other';
  readonly wanted: number | undefined;
}

function courseOf({ kitchen, trial, drink, wanted }: Around, jar: Jar): Course {
  const readings = readingsInTime(kitchen, jar);
  const brix = pointsOf(readings, brixOf);
  const ph = pointsOf(readings, (reading) => reading.ph);
  const temperatures = temperaturesSinceStart(readings);
  const sugars = brix.map(({ hours, value }) => ({ hours, sugar: value }));
  const decline = sugarDecline(sugars);
  const sweet = wanted === undefined || wanted <= 0 ? null : timeToSweetness(sugars, wanted);
  const last = Math.max(0, ...brix.map(({ hours }) => hours));
  const hoursDrawn = Array.from({ length: curvePoints }, (_, step) => (last * step) / (curvePoints - 1));
  const formula = trial.levelsWhole.find(({ id }) => id === jar.level)?.formula;
  const base = baseOfTrial(kitchen, trial);
  const room = roomOf(formula ?? { additions: [], days: 0, cover: null, temperature_C: null }, trial, base);
  return {
    jar: jar.id,
    label: jar.label,
    level: jar.levelName,
    isControl: jar.isControl,
    brix,
    ph,
    temperature_C: pointsOf(readings, ({ temperature_C }) => temperature_C),
    fall: decline.ok
      ? {
          model: decline.value.fitted.model.name,
          residualSd: decline.value.residualSd,
          curve: declineBand(decline.value, sugars, hoursDrawn),
        }
      : null,
    events: eventsOf(kitchen, jar),
    stood: stoodOf(jar, kitchen.now(), temperatures, room),
    sweetEnough: sweet?.ok ? { hours: sweet.value.hours, low: sweet.value.low, high: sweet.value.high } : null,
    equivalentHours: temperatures.length === 0 ? null : equivalentHours(temperatures),
    cautions: readingCautions(
      ph.map(({ hours, value }) => ({ hours, pH: value })),
      drink,
    ),
    reasons: [...(decline.ok ? [] : [decline.reason]), ...(sweet === null || sweet.ok ? [] : [sweet.reason])],
  };
}

/** Whether the trial's base was made by a culture that is called kombucha. */
function drinkOf(kitchen: Kitchen, trial: TrialWhole): Around['drink'] {
  const culture = baseOfTrial(kitchen, trial)?.culture;
  return culture != null && /kombucha/i.test(`${culture.kind} ${culture.name}`) ? 'kombucha' : 'other';
}

export const courseHandlers: Handlers<'course:read'> = {
  'course:read'(kitchen, { trial: id, wanted_brix }) {
    const trial = found(findTrial(kitchen.read, id), 'trial', 'trial');
    const around = { kitchen, trial, drink: drinkOf(kitchen, trial), wanted: wanted_brix };
    return { jars: jarsOfTrial(kitchen.read, id).map((jar) => courseOf(around, jar)) };
  },
};
