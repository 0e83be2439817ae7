import { OutOfDomain, within } from '#core/out-of-domain.ts';
import { cardinalTemperatureModel, yeast, yeastMinimumRange_C } from './cardinal-temperature-model.ts';

/** The temperature whose hours jars of different weeks are compared in, °C. */
export const comparedAt_C = 22;

/** One line of a temperature log: hours since the start and the temperature then. */
export interface TemperatureReading {
  readonly hours: number;
  readonly temperature_C: number;
}

/** A number of hours that is only known as a range. */
export interface HoursRange {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/** The three minima that a range is made of: the genus's lowest, that of S. cerevisiae, the genus's highest. */
export const minima_C = [yeastMinimumRange_C[0], yeast.minimum_C, yeastMinimumRange_C[1]] as const;

/** Between these every minimum of the genus still grows, so that a reference exists. */
const coldestReference_C = 5;
const warmestReference_C = 45;
/** Steps of Simpson's rule between two lines of the log. */
const stepsBetweenReadings = 24;

/** The reference yeast, once for each of the minima. */
const yeasts = minima_C.map((minimum_C) => ({ ...yeast, minimum_C }));

/** How fast the reference yeast runs at a temperature, for a minimum of its range. */
export function yeastRate(temperature_C: number, minimum_C: number): number {
  const known = yeasts.find((one) => one.minimum_C === minimum_C) ?? { ...yeast, minimum_C };
  return cardinalTemperatureModel(temperature_C, known);
}

/**
 * Hours at a reference temperature that would have done as much as the hours of a log.
 *
 * Method: ∫ γ(T(t)) dt / γ(reference), γ the CTMI of Saccharomyces; temperature runs straight between readings, and the first reading
 * holds back to hour 0. The range comes from the minimum temperature, 1.3–4.3 °C over the genus. Leaves out bacteria (whose response is
 * steeper), the lag of a chilled culture, and everything that is not temperature.
 *
 * @param log at least one reading, hours from 0 and rising
 * @param reference_C 5–45; default 22
 * @throws OutOfDomain when the log is empty or not rising, or the reference is outside its range
 * Accuracy: 0.1 % in the integral; the model itself is good to about a tenth.
 * Source: Rosso et al. (1993); Salvadó et al. (2011).
 * @example equivalentHours([{ hours: 48, temperature_C: 20 }], 25).middle // 34.5
 */
export function equivalentHours(log: readonly TemperatureReading[], reference_C = comparedAt_C): HoursRange {
  within('reference_C', reference_C, coldestReference_C, warmestReference_C);
  if (log.length === 0) throw new OutOfDomain('log', 'empty', 'at least one reading');
  const results = minima_C.map((minimum_C) => integral(log, minimum_C) / yeastRate(reference_C, minimum_C));
  const [first = 0, middle = 0, last = 0] = results;
  return { low: Math.min(first, middle, last), middle, high: Math.max(first, middle, last) };
}

function integral(log: readonly TemperatureReading[], minimum_C: number): number {
  let before: TemperatureReading = { hours: 0, temperature_C: log[0]?.temperature_C ?? 0 };
  let sum = 0;
  for (const [place, reading] of log.entries()) {
    const least = place === 0 ? 0 : before.hours;
    if (!(reading.hours >= least && Number.isFinite(reading.hours)) || (place > 0 && reading.hours === least)) {
      throw new OutOfDomain(
        `log[${place}].hours`,
        reading.hours,
        `more than ${least}, each line later than the one before`,
      );
    }
    const from = before;
    const span = reading.hours - from.hours;
    const slope = reading.temperature_C - from.temperature_C;
    sum += span * simpson((share) => yeastRate(from.temperature_C + share * slope, minimum_C));
    before = reading;
  }
  return sum;
}

/** Mean of a function over 0–1. */
function simpson(value: (share: number) => number): number {
  let sum = value(0) + value(1);
  for (let step = 1; step < stepsBetweenReadings; step += 1) {
    sum += (step % 2 === 1 ? 4 : 2) * value(step / stepsBetweenReadings);
  }
  return sum / (3 * stepsBetweenReadings);
}
