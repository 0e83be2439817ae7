import { phrase } from '#core/words/phrase.ts';

type Kind = 'brix' | 'sg' | 'ph' | 'temperature_C' | 'acidity';

/** What each measurement of a jar may be, and the sentence that says so. */
export const ranges: Readonly<Record<Kind, readonly [number, number, () => string]>> = {
  brix: [0, 80, () => phrase`Brix runs from 0 to 80`],
  sg: [0.9, 1.4, () => phrase`Specific gravity runs from ${0.9} to ${1.4}`],
  ph: [0, 14, () => phrase`pH runs from 0 to 14`],
  temperature_C: [-40, 110, () => phrase`A jar’s temperature lies between −40 and 110 °C`],
  acidity: [0, 200, () => phrase`Acidity runs from 0 to 200 g/L`],
};

/** What each is called within a sentence. */
export const names: Readonly<Record<Kind, string>> = {
  get brix() {
    return phrase`Brix`;
  },
  get sg() {
    return phrase`specific gravity`;
  },
  ph: 'pH',
  get temperature_C() {
    return phrase`the temperature`;
  },
  get acidity() {
    return phrase`the acidity`;
  },
};
