import { OutOfDomain, within } from '#core/out-of-domain.ts';
import { type Celsius, type Hours, hours } from '#core/units/branded.ts';
import { minima_C, yeastRate } from './equivalent-hours.ts';
import { type MixPart, mixEnthalpy_kJ } from './mixing.ts';

/** Heat that still air and radiation bring to a jar, W/(m²·K). Common practice for a jar standing in a room: 5 to 12. */
export const stillAir_W_per_m2K = 8;
/** Below this all yeast stands still and ice may be left; the warming is followed in small steps up to here. */
const meltedBy_C = 0.5;
const meltingSteps = 24;
const lossSteps = 16;

/** How a jar meets the room. */
export interface JarSurface {
  readonly ambient_C: Celsius;
  /** Heat gained per kelvin of difference, W/K: coefficient times surface. */
  readonly conductance_W_per_K: number;
}

/** The way back to the room's temperature. */
export interface Warming {
  readonly hoursToWithinOneDegree: Hours;
  /** Hours at the reference temperature that the cold costs, over the range of yeast's minimum temperature. */
  readonly lost: { readonly low: number; readonly high: number };
}

/**
 * How long a cold mix takes to come within one degree of the room, and what that costs the ferment.
 *
 * Method: Newton's law, dH/dt = hA (ambient − T), well mixed. While ice is about, in steps of the heat content; after that exactly. Lost
 * hours: ∫ [γ(ambient) − γ(T)] dt / γ(reference), γ the CTMI. Leaves out stirring, draughts, the ferment's own warmth, and the slow start of a
 * chilled culture: the rest of a slow start is not temperature.
 *
 * @param parts what is in the jar @param mix_C where it starts @param surface how it meets the room
 * @param reference_C 5–45, the temperature whose hours are counted
 * @throws OutOfDomain when the conductance is not above 0
 * Accuracy: a quarter of the time, because the coefficient is (calibrate it with two readings to do better).
 * Source: Newton's law of cooling; Rosso et al. (1993); Salvadó et al. (2011).
 */
export function warming(parts: readonly MixPart[], mix_C: Celsius, surface: JarSurface, reference_C: number): Warming {
  const { ambient_C, conductance_W_per_K: conductance } = surface;
  if (!(conductance > 0)) throw new OutOfDomain('conductance_W_per_K', conductance, 'more than 0');
  const melted_C = Math.max(mix_C, Math.min(meltedBy_C, ambient_C - 1));
  let melting_h = 0;
  let heat = mixEnthalpy_kJ(parts, mix_C);
  for (let step = 1; step <= meltingSteps && melted_C > mix_C; step += 1) {
    // Stepping by temperature but counting heat: the melt is a large heat within one small step.
    const to = mix_C + (melted_C - mix_C) * (step / meltingSteps);
    const from = mix_C + (melted_C - mix_C) * ((step - 1) / meltingSteps);
    const next = mixEnthalpy_kJ(parts, to);
    melting_h += (next - heat) / (3.6 * conductance * (ambient_C - (from + to) / 2));
    heat = next;
  }
  const gap = ambient_C - melted_C;
  const timeConstant_h = Math.abs(gap) < 1e-9 ? 0 : capacity_kJ_per_K(parts, melted_C, ambient_C) / (3.6 * conductance);
  const after_h = Math.abs(gap) > 1 ? timeConstant_h * Math.log(Math.abs(gap)) : 0;
  const lost = minima_C.map((minimum) => {
    const room = yeastRate(ambient_C, minimum);
    const standing = melting_h * room;
    return (standing + timeConstant_h * shortfall(ambient_C, gap, minimum, room)) / yeastRate(reference_C, minimum);
  });
  return {
    hoursToWithinOneDegree: hours(melting_h + after_h),
    lost: { low: Math.min(...lost), high: Math.max(...lost) },
  };
}

function capacity_kJ_per_K(parts: readonly MixPart[], from_C: number, to_C: number): number {
  return (mixEnthalpy_kJ(parts, to_C) - mixEnthalpy_kJ(parts, from_C)) / (to_C - from_C);
}

/** ∫ [γ(ambient) − γ(ambient − s)] / s ds over the gap: the whole tail of the warming, by the midpoint rule. */
function shortfall(ambient_C: number, gap: number, minimum_C: number, room: number): number {
  let sum = 0;
  for (let step = 0; step < lossSteps; step += 1) {
    const s = (gap * (step + 0.5)) / lossSteps;
    sum += s === 0 ? 0 : (room - yeastRate(ambient_C - s, minimum_C)) / (step + 0.5);
  }
  return sum;
}

/**
 * A jar's own time constant from two readings while it warms.
 *
 * Method: Newton's law between them, τ = (t₂ − t₁) / ln[(ambient − T₁)/(ambient − T₂)].
 *
 * @param first the earlier reading @param second the later one, nearer the room's temperature @param ambient_C the room
 * @returns hours; the conductance is the contents' heat capacity over it
 * @throws OutOfDomain when the second reading is not later and nearer to the room's temperature on the same side of it
 * @example calibratedTimeConstant_h({ hours: 0, temperature_C: 10 }, { hours: 2, temperature_C: 16 }, 22) // 2.885
 */
export function calibratedTimeConstant_h(
  first: { readonly hours: number; readonly temperature_C: number },
  second: { readonly hours: number; readonly temperature_C: number },
  ambient_C: number,
): number {
  const span = within('second.hours', second.hours - first.hours, Number.MIN_VALUE, Number.MAX_VALUE);
  const ratio = (ambient_C - first.temperature_C) / (ambient_C - second.temperature_C);
  if (!(ratio > 1 && Number.isFinite(ratio))) {
    throw new OutOfDomain(
      'second.temperature_C',
      second.temperature_C,
      'nearer to the room than the first, not past it',
    );
  }
  return span / Math.log(ratio);
}
