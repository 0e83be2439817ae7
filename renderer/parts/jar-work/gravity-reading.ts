import { calibrations_C, correctedGravity } from '#core/ferment/corrected-gravity.ts';
import { formatQuantity } from '#core/units/format-quantity.ts';
import type { Measures } from '#renderer/format/use-measures.ts';
import { words } from './words.ts';

export type Stem = keyof typeof calibrations_C | 'asRead';

/** What is logged of a hydrometer reading, what is said of it, and whether it may be logged at all. */
export interface GravityReading {
  readonly sg: number;
  readonly said: string;
  readonly note: string | null;
  readonly isFault: boolean;
}

/** A hydrometer reading as it will be logged: brought to 20 °C where the sample's temperature is known. */
export function gravityReading(
  sg: number,
  sample_C: number | undefined,
  stem: Stem,
  measures: Measures,
): GravityReading {
  const asRead = { sg, note: null, isFault: false };
  if (stem === 'asRead') return { ...asRead, said: words.gravity.asRead };
  if (sample_C === undefined) return { ...asRead, said: words.gravity.noTemperature };
  const corrected = correctedGravity(sg, sample_C, calibrations_C[stem]);
  if (!corrected.ok) {
    return { ...asRead, said: corrected.message, isFault: corrected.code !== 'lighter-than-water' };
  }
  const read = formatQuantity(sg, 'sg', measures.system);
  const sample = measures.temperature(sample_C);
  const shown = formatQuantity(corrected.sg, 'sg', measures.system);
  return {
    sg: Number(corrected.sg.toFixed(4)),
    said: words.gravity.corrected(shown, read, sample, words.gravity.stems[stem]),
    note: words.gravity.note(read, sample, words.gravity.stems[stem]),
    isFault: false,
  };
}
