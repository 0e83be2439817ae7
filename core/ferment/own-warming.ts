import type { TemperatureReading } from './equivalent-hours.ts';
import { calibratedTimeConstant_h } from './warming.ts';

/** A first reading nearer to the room than this says little about how fast the jar warms, °C. */
const leastGap_C = 3;
/** So near to the room the thermometer's own doubt is as large as what is left, °C. */
const nearRoom_C = 1;
/** A kitchen thermometer's doubt, °C. Common practice, no source. */
const thermometerDoubt_C = 0.5;
/** Ice holds a jar at one temperature however warm the room is. */
const iceFree_C = 1;

/** How fast this very jar comes to the room's temperature, from two of its own readings. */
export interface OwnWarming {
  readonly first: TemperatureReading;
  readonly second: TemperatureReading;
  /** Hours; `low` and `high` as a thermometer half a degree off would give them, `high` null where it would give no end. */
  readonly timeConstant_h: { readonly low: number; readonly middle: number; readonly high: number | null };
}

/**
 * Looks for two readings of a jar's temperature that tell how fast it warms or cools.
 *
 * Method: of all pairs that lie on one side of the room's temperature, the first at least 3 °C from it, the second later, at least 1 °C from
 * it and at least 1 °C nearer, the pair that moved most; between them Newton's law. Leaves out a room that changes meanwhile, and the
 * ferment's own warmth.
 *
 * @param readings hours since the start and temperature, in any order; those before the start are passed over
 * @param ambient_C the room
 * @returns `null` when no two readings are suitable
 * Accuracy: the doubt of half a degree in each reading, given as a range.
 * Source: Newton's law of cooling.
 * @example ownWarming([{ hours: 0, temperature_C: 10 }, { hours: 2, temperature_C: 16 }], 22)?.timeConstant_h.middle // 2.885
 */
export function ownWarming(readings: readonly TemperatureReading[], ambient_C: number): OwnWarming | null {
  const inOrder = readings.filter((one) => one.hours >= 0).toSorted((a, b) => a.hours - b.hours);
  let best: { first: TemperatureReading; second: TemperatureReading; moved_C: number } | null = null;
  for (const [place, first] of inOrder.entries()) {
    const gap = ambient_C - first.temperature_C;
    if (Math.abs(gap) < leastGap_C || first.temperature_C < iceFree_C) continue;
    for (const second of inOrder.slice(place + 1)) {
      const left = (ambient_C - second.temperature_C) * Math.sign(gap);
      const moved_C = Math.abs(gap) - left;
      const isSuitable = second.hours > first.hours && left >= nearRoom_C && moved_C >= 2 * thermometerDoubt_C;
      if (isSuitable && (best === null || moved_C > best.moved_C)) best = { first, second, moved_C };
    }
  }
  if (best === null) return null;
  const { first, second } = best;
  const towards = Math.sign(ambient_C - first.temperature_C) * thermometerDoubt_C;
  const shifted = (from: number, to: number) =>
    calibratedTimeConstant_h(
      { ...first, temperature_C: first.temperature_C + from },
      { ...second, temperature_C: second.temperature_C + to },
      ambient_C,
    );
  return {
    first,
    second,
    timeConstant_h: {
      low: shifted(-towards, towards),
      middle: shifted(0, 0),
      high: best.moved_C > 2 * thermometerDoubt_C ? shifted(towards, -towards) : null,
    },
  };
}
