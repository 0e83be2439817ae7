import { OutOfDomain } from '#core/out-of-domain.ts';

/** Where growth begins, is fastest and ends. */
export interface CardinalTemperatures {
  readonly minimum_C: number;
  readonly optimum_C: number;
  readonly maximum_C: number;
}

/** Saccharomyces cerevisiae. Optimum and maximum: Salvadó et al. (2011), Appl. Environ. Microbiol. 77, 2292; its minimum from memory. */
export const yeast: CardinalTemperatures = { minimum_C: 2.8, optimum_C: 32.3, maximum_C: 45.4 };

/** The minima found over the genus Saccharomyces, °C. Source: the same abstract. */
export const yeastMinimumRange_C: readonly [number, number] = [1.3, 4.3];

/**
 * How fast growth runs at a temperature, as a share of its fastest: the cardinal temperature model with inflection (CTMI).
 *
 * Method: γ = (T−Tmax)(T−Tmin)² / {(Topt−Tmin)[(Topt−Tmin)(T−Topt) − (Topt−Tmax)(Topt+Tmin−2T)]}, 0 outside (Tmin, Tmax).
 * Leaves out acidity, alcohol, sugar, and how soon a chilled culture wakes.
 *
 * @param temperature_C any temperature
 * @param cardinal minimum < optimum < maximum, the optimum nearer the maximum
 * @returns 0 to 1
 * @throws OutOfDomain when the three are out of order or the temperature is not finite
 * Accuracy: exact in the formula; the cardinal temperatures of a mixed culture are not known better than a few degrees.
 * Source: Rosso, Lobry and Flandrois (1993), J. Theor. Biol. 162, 447.
 * @example cardinalTemperatureModel(15, { minimum_C: 5, optimum_C: 20, maximum_C: 30 }) // 0.8
 */
export function cardinalTemperatureModel(temperature_C: number, cardinal: CardinalTemperatures): number {
  const { minimum_C: low, optimum_C: best, maximum_C: high } = cardinal;
  if (!(low < best && best < high && 2 * best > low + high)) {
    throw new OutOfDomain(
      'cardinal',
      `${low}, ${best}, ${high}`,
      'minimum < optimum < maximum, optimum above their middle',
    );
  }
  const T = temperature_C;
  if (!Number.isFinite(T)) throw new OutOfDomain('temperature_C', T, 'a finite number');
  if (T <= low || T >= high) return 0;
  const rise = best - low;
  return ((T - high) * (T - low) ** 2) / (rise * (rise * (T - best) - (best - high) * (best + low - 2 * T)));
}
