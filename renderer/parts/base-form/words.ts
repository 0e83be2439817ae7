import { phrase } from '#core/words/phrase.ts';

export const words = {
  name: phrase`Name`,
  culture: phrase`Culture`,
  noCulture: phrase`None`,
  volume: phrase`How much of it`,
  volumeHint: {
    metric: phrase`Such as 4 L; a bare number is mL.`,
    us: phrase`Such as 1 gal or 3 qt; a bare number is cups.`,
  },
  volumeMissing: phrase`Say how much there is, such as 4 L or 1 gal.`,
  sugarStart: phrase`Sugar at the start`,
  sugarNow: phrase`Sugar now`,
  sugarHint: {
    metric: phrase`Such as 60 g/L, 6 brix or ${1.024}; a bare number is g/L.`,
    us: phrase`Such as 8 oz/gal, 6 brix or ${1.024}; a bare number is oz/gal.`,
  },
  temperature: phrase`How warm it stands`,
  temperatureHint: { metric: phrase`Such as 22 °C.`, us: phrase`Such as 72 °F.` },
  alcohol: phrase`Alcohol, in % vol`,
  planned: phrase`How long it ferments`,
  plannedHint: phrase`Such as 2 days or 36 h; empty: two days (common practice, no source).`,
  wentIn: phrase`What went in`,
  wentInHint: phrase`Water, sugar, minerals, peels: one a line, such as “240 g sugar”.`,
  note: phrase`Note`,
  start: phrase`Start a base`,
  keep: phrase`Keep`,
  started: phrase`The base has started.`,
  kept: phrase`Kept.`,
} as const;
