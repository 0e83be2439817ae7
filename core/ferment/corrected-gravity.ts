import { OutOfDomain } from '#core/out-of-domain.ts';
import { phrase } from '#core/words/phrase.ts';
import { hydrometer } from './hydrometer.ts';

/** Temperatures that hydrometers are made for; 60 °F is the usual one in the US. Common practice, no source. */
export const calibrations_C = { celsius20: 20, fahrenheit60: 140 / 9 } as const;

/** A reading as the drink has it at 20 °C, or why it can't be corrected. */
export type CorrectedGravity =
  | { readonly ok: true; readonly sg: number; readonly brix: number }
  | {
      readonly ok: false;
      readonly code: 'sample-out-of-range' | 'reading-out-of-range' | 'lighter-than-water';
      readonly message: string;
    };

/**
 * A hydrometer reading brought to 20 °C, said in a sentence where it can't be.
 *
 * Method: `hydrometer`. Leaves out alcohol, which makes a drink read lighter than its sugar.
 *
 * @param reading_sg what the stem shows; corrected from 0.98 to 1.3
 * @param sample_C the sample's temperature; corrected from 5 to 35
 * @param calibration_C what the stem is made for, 15–20
 * @throws OutOfDomain when the calibration lies outside its range
 * Accuracy and source: those of `hydrometer`.
 * @example correctedGravity(1.038, 30, 20) // sg 1.0407
 */
export function correctedGravity(reading_sg: number, sample_C: number, calibration_C: number): CorrectedGravity {
  if (!(sample_C >= 5 && sample_C <= 35)) {
    const shown = Number(sample_C.toFixed(1));
    return {
      ok: false,
      code: 'sample-out-of-range',
      message: phrase`A hydrometer reading can be corrected between 5 and 35 °C (41 and 95 °F); this sample has ${shown} °C. Let it come to room temperature and read again, or log it as read.`,
    };
  }
  if (!(reading_sg >= 0.98 && reading_sg <= 1.3)) {
    return {
      ok: false,
      code: 'reading-out-of-range',
      message: phrase`A hydrometer reading can be corrected between ${0.98} and ${1.3}; this says ${reading_sg}.`,
    };
  }
  try {
    const { sg, brix } = hydrometer(reading_sg, sample_C, calibration_C);
    return { ok: true, sg, brix };
  } catch (error) {
    if (!(error instanceof OutOfDomain) || !(reading_sg < 1.01)) throw error;
    return {
      ok: false,
      code: 'lighter-than-water',
      message: phrase`That is lighter than water at this temperature: alcohol is in it, and the sugar table no longer corrects it. It is logged as read.`,
    };
  }
}
