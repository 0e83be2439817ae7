import { OutOfDomain } from '#core/out-of-domain.ts';
import type { Reason } from '#core/reason.ts';
import { phrase } from '#core/words/phrase.ts';
import { type FittedModel, firstOrder, fitModel, logistic, type SugarReading } from './decline-models.ts';

/** Readings below which no curve is drawn. */
export const leastReadings = 4;

/** How a jar's sugar falls, as its readings tell. */
export interface SugarDecline {
  readonly fitted: FittedModel;
  /** Akaike's criterion, corrected for few readings; `null` where there are too few for the model. */
  readonly aicc: { readonly firstOrder: number | null; readonly logistic: number | null };
  /** Typical miss of a reading, in its own unit. */
  readonly residualSd: number;
}

export type DeclineResult =
  | { readonly ok: true; readonly value: SugarDecline }
  | { readonly ok: false; readonly reason: Reason };

/**
 * How the sugar of a jar falls: first-order or logistic, whichever its readings support.
 *
 * Method: both by least squares; the smaller AICc wins, the spread counted among the parameters. With too few readings for a model's AICc
 * (under five for first-order, under six for logistic) that model does not compete, and the simpler one is kept. Both end at zero sugar.
 * Leaves out changing temperature: use readings at one temperature, or put equivalent hours in.
 *
 * @param readings at least four at different hours; sugar at least 0, all in g/L or all in °Bx
 * @returns the fit, or a reason: too few readings, or sugar that does not fall
 * @throws OutOfDomain when a reading is negative or not finite
 * Source: Burnham and Anderson (2002), Model Selection and Multimodel Inference, section 2.4 (AICc).
 */
export function sugarDecline(readings: readonly SugarReading[]): DeclineResult {
  for (const [place, { hours, sugar }] of readings.entries()) {
    if (!(sugar >= 0 && sugar < Number.POSITIVE_INFINITY))
      throw new OutOfDomain(`readings[${place}].sugar`, sugar, '0 or more');
    if (!Number.isFinite(hours)) throw new OutOfDomain(`readings[${place}].hours`, hours, 'a finite number');
  }
  const different = new Set(readings.map((one) => one.hours)).size;
  if (different < leastReadings) {
    return refused(
      'too-few-readings',
      phrase`At least ${leastReadings} readings at different hours; there are ${different}.`,
    );
  }
  if (!falls(readings)) return refused('no-decline', phrase`Readings that go down over time.`);
  const one = fitModel(firstOrder, readings);
  const two = fitModel(logistic, readings);
  const aicc = { firstOrder: criterion(one, readings), logistic: criterion(two, readings) };
  const fitted = aicc.logistic !== null && aicc.firstOrder !== null && aicc.logistic < aicc.firstOrder ? two : one;
  const freedom = readings.length - fitted.model.parameters;
  return { ok: true, value: { fitted, aicc, residualSd: Math.sqrt(fitted.squares / freedom) } };
}

/** Sugar that a fit expects at an hour. */
export function sugarAt({ fitted }: SugarDecline, hours: number): number {
  return fitted.height * fitted.model.curve(hours, fitted.shape);
}

/** The straight line through the readings points down. */
function falls(readings: readonly SugarReading[]): boolean {
  const middle = readings.reduce((sum, one) => sum + one.hours, 0) / readings.length;
  return readings.reduce((sum, { hours, sugar }) => sum + (hours - middle) * sugar, 0) < 0;
}

function criterion(fitted: FittedModel, readings: readonly SugarReading[]): number | null {
  const n = readings.length;
  const counted = fitted.model.parameters + 1;
  if (n - counted - 1 <= 0) return null;
  // Readings that fit to the last digit would make the criterion endless; nobody reads better than a millionth.
  const largest = Math.max(...readings.map((one) => one.sugar));
  const squares = Math.max(fitted.squares, n * (1e-6 * largest) ** 2);
  return n * Math.log(squares / n) + 2 * counted + (2 * counted * (counted + 1)) / (n - counted - 1);
}

function refused(code: 'too-few-readings' | 'no-decline', needs: string): { ok: false; reason: Reason } {
  return { ok: false, reason: { path: ['readings'], code, needs } };
}
