import { within } from '#core/out-of-domain.ts';
import type { Reason } from '#core/reason.ts';
import { phrase } from '#core/words/phrase.ts';
import { type FittedModel, fitModel, type SugarReading } from './decline-models.ts';
import { studentQuantile975 } from './student-quantile-975.ts';
import { sugarDecline } from './sugar-decline.ts';

/** How many times the span of the readings a forecast may reach beyond them. */
const farthestSpans = 5;

/** When a jar will be as sweet as wanted. */
export interface SweetnessTime {
  readonly model: 'first-order' | 'logistic';
  readonly hours: number;
  /** The 95 % interval; `null` at an end that the readings leave open. */
  readonly low: number | null;
  readonly high: number | null;
}

export type SweetnessResult =
  | { readonly ok: true; readonly value: SweetnessTime }
  | { readonly ok: false; readonly reason: Reason };

/**
 * When a jar's sugar will have fallen to a wanted value, with a 95 % interval.
 *
 * Method: `sugarDecline`, then the profile of the sum of squares over that hour: the hours at which the best curve through the wanted point is
 * no worse than the F test allows. Leaves out the doubt about the shape itself and any change of temperature.
 *
 * @param readings as for `sugarDecline`
 * @param wanted in the readings' unit, more than 0
 * @returns hours on the readings' own clock, or a reason
 * @throws OutOfDomain when `wanted` is negative or not finite
 * Accuracy: the interval covers 95 % when the shape is right and readings scatter evenly (checked by simulation in the tests).
 * Source: Bates and Watts (1988), Nonlinear Regression Analysis and Its Applications, section 6.1 (profile t).
 */
export function timeToSweetness(readings: readonly SugarReading[], wanted: number): SweetnessResult {
  within('wanted', wanted, 0, Number.MAX_VALUE);
  const decline = sugarDecline(readings);
  if (!decline.ok) return decline;
  const { fitted } = decline.value;
  const all = readings.map((one) => one.hours);
  const [first, last] = [Math.min(...all), Math.max(...all)];
  const reach = farthestSpans * (last - first);
  const hours = hourOf(fitted, wanted);
  if (hours === null || hours < first - (last - first) / 10 || hours > last + reach) {
    const needs = phrase`A sweetness between what the jar had at the start and what it will reach in a few times the time read so far.`;
    return { ok: false, reason: { path: ['hours'], code: 'target-not-reached', needs } };
  }
  const freedom = readings.length - fitted.model.parameters;
  const allowed = fitted.squares * (1 + studentQuantile975(freedom) ** 2 / freedom);
  const tooFar = (hour: number) =>
    fitModel(fitted.model, readings, { point: { hours: hour, sugar: wanted }, near: fitted.shape }).squares > allowed;
  const step = (last - first) / 50;
  return {
    ok: true,
    value: {
      model: fitted.model.name,
      hours,
      low: edge(tooFar, hours, -step, first - reach),
      high: edge(tooFar, hours, step, last + reach),
    },
  };
}

function hourOf({ model, height, shape }: FittedModel, wanted: number): number | null {
  const share = wanted / height;
  const [logRate = 0, middle = 0] = shape;
  const hours =
    model.name === 'logistic'
      ? middle + Math.log(1 / share - 1) / Math.exp(logRate)
      : -Math.log(share) / Math.exp(logRate);
  return Number.isFinite(hours) ? hours : null;
}

/** Where, going from `inside` by growing steps, it becomes too far; `null` when that does not happen before `end`. */
function edge(tooFar: (hour: number) => boolean, inside: number, step: number, end: number): number | null {
  let near = inside;
  let stride = step;
  let far = near + stride;
  while (!tooFar(far)) {
    near = far;
    stride *= 1.6;
    far = near + stride;
    if (step > 0 ? far > end : far < end) return null;
  }
  for (let halving = 0; halving < 40 && Math.abs(far - near) > 1e-6 * Math.abs(step); halving += 1) {
    const middle = (near + far) / 2;
    if (tooFar(middle)) far = middle;
    else near = middle;
  }
  return (near + far) / 2;
}
