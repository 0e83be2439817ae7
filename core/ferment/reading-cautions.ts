import { within } from '#core/out-of-domain.ts';
import { phrase } from '#core/words/phrase.ts';
import { type Caution, caution, commonPractice } from './caution.ts';

const acidLine_pH = 4.6;
/** A rise smaller than this is the meter's. Common practice for a kitchen pH meter. */
const noise_pH = 0.1;
const kombuchaLow_pH = 2.5;
const kombuchaHigh_pH = 4.2;

/** One pH reading of a jar. */
export interface PhReading {
  readonly hours: number;
  readonly pH: number;
}

/**
 * What a jar's pH readings ask to be careful about: above 4.6, rising, or outside the guidance for kombucha.
 *
 * Method: the last reading against the lines; rising when it lies more than 0.1 above the lowest before it. It never predicts a pH.
 *
 * @param readings in any order, pH 0–14; empty gives none
 * @param drink 'kombucha' also shows that guidance
 * @throws OutOfDomain when a pH is outside 0–14
 * Source: 21 CFR 114.3 (acid foods, 4.6); Niagara Region Public Health, Kombucha best practices (2.5–4.2).
 */
export function readingCautions(readings: readonly PhReading[], drink: 'kombucha' | 'other' = 'other'): Caution[] {
  const inOrder = readings.toSorted((a, b) => a.hours - b.hours);
  for (const [place, { pH }] of inOrder.entries()) within(`readings[${place}].pH`, pH, 0, 14);
  const last = inOrder.at(-1);
  if (!last) return [];
  const found: Caution[] = [];
  if (last.pH > acidLine_pH) {
    found.push(
      caution(
        'ph-high',
        phrase`pH ${last.pH} is above ${4.6}, the line of acid foods: what spoils food can grow there. If it does not fall within a day or so, throw it away.`,
        phrase`21 CFR 114.3 (acid and acidified foods); drinks with gas or alcohol fall outside that rule, the line is still the usual guide`,
      ),
    );
  }
  const lowest = Math.min(...inOrder.slice(0, -1).map((one) => one.pH));
  if (last.pH > lowest + noise_pH) {
    found.push(
      caution(
        'ph-rising',
        phrase`pH rose from ${lowest} to ${last.pH}. A live ferment gets sourer; look for mould or yeast eating the acid.`,
        commonPractice(),
      ),
    );
  }
  if (drink === 'kombucha' && (last.pH < kombuchaLow_pH || last.pH > kombuchaHigh_pH)) {
    found.push(
      caution(
        'ph-guidance',
        phrase`pH ${last.pH}: guidance for kombucha is between ${kombuchaLow_pH} and ${kombuchaHigh_pH}. Ask your local health authority.`,
        phrase`Niagara Region Public Health, Kombucha best practices`,
      ),
    );
  }
  return found;
}

/** The caution of a refractometer in a fermenting liquid. */
export function refractometerCaution(): Caution {
  return caution(
    'refractometer-alcohol',
    phrase`If this comes from a refractometer: alcohol bends light too, so once it ferments it shows more sugar than there is. Compare such readings with each other, not with a label.`,
    commonPractice(),
  );
}

/** The caution of a hydrometer in a fermenting liquid. */
export function hydrometerCaution(): Caution {
  return caution(
    'hydrometer-alcohol',
    phrase`Alcohol is lighter than water and gas lifts the stem: shake the gas out first, and take the sugar that an SG of a ferment tells as too low.`,
    commonPractice(),
  );
}

/** The caution of the alkali that a titration uses. */
export function titrantCaution(): Caution {
  return caution(
    'caustic-titrant',
    phrase`The titrant is an alkali: keep it off skin and out of eyes, and pour the sample away afterwards. Shake the gas out first: it counts as acid.`,
    commonPractice(),
  );
}
