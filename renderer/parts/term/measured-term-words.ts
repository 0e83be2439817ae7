import { phrase } from '#core/words/phrase.ts';
import type { TermEntry } from './term-entry.ts';

/** Words of what is measured in a jar or seen in it, and what is reckoned from that. */
export const measuredTermWords = {
  reading: {
    forms: phrase`reading|readings`,
    meaning: phrase`A measured number: Brix, SG, pH, acidity, temperature.`,
  },
  sighting: { forms: phrase`sighting|sightings`, meaning: phrase`Something seen: bubbles, froth, film, mould.` },
  diary: { forms: phrase`diary|`, meaning: phrase`All that was noted of one jar: readings, sightings, sips, photos.` },
  brix: {
    forms: phrase`Brix|brix|degrees Brix|°Bx`,
    meaning: phrase`Degrees Brix: grams of sugar in 100 g, as an instrument for pure sugar water sees it.`,
  },
  sg: {
    forms: phrase`SG|specific gravity`,
    meaning: phrase`Specific gravity: how many times as heavy as water; sugar raises it, alcohol lowers it.`,
  },
  ph: {
    forms: phrase`pH|`,
    meaning: phrase`How strong the acid is: 7 is plain water, lemon juice is about 2; lower is more acid.`,
  },
  acidity: {
    forms: phrase`titratable acidity|acidity`,
    meaning: phrase`How much acid there is in all, in g/L; nearer to how sour it tastes than pH.`,
  },
  titration: {
    forms: phrase`titration|titrated to|titrated`,
    meaning: phrase`Dripping in lye until the acid is used up; how much it took tells how much acid there was.`,
  },
  titrant: { forms: phrase`titrant used|titrant`, meaning: phrase`The lye of known strength that is dripped in.` },
  normality: {
    forms: phrase`normality|titrant strength`,
    meaning: phrase`How strong the lye is, in N, as its bottle says; 0.1 N is usual.`,
  },
  refractometer: {
    forms: phrase`refractometer|refractometers`,
    meaning: phrase`Shows Brix from a drop held against the light; alcohol makes it read high.`,
  },
  hydrometer: {
    forms: phrase`hydrometer|hydrometers`,
    meaning: phrase`A glass float that shows SG: the more sugar, the higher it swims.`,
  },
  residualSugar: {
    forms: phrase`residual sugar|sugar left|sugar now|sugar in the jar|sugar at closing|sugar, by the last reading`,
    meaning: phrase`The sugar that has not fermented yet: it sweetens, and it can still make gas and alcohol.`,
  },
  alcohol: {
    forms: phrase`% vol|alcohol by volume|alcohol at most|if all sugar became alcohol|alcohol`,
    meaning: phrase`In % vol: millilitres of pure alcohol in 100 mL of the drink.`,
  },
  yeastYield: {
    forms: phrase`yeast’s own yield|`,
    meaning: phrase`The alcohol that yeast really makes: a part of the sugar it keeps for itself.`,
  },
  carbonation: {
    forms: phrase`volumes of CO₂|CO₂ at most|CO₂|carbonation`,
    meaning: phrase`Gas in the drink: at 3 volumes, each litre of it holds 3 litres of gas.`,
  },
  pressure: {
    forms: phrase`gauge pressure|pressure`,
    meaning: phrase`Gauge pressure: how hard the gas presses beyond the air outside; 0 is an open bottle.`,
  },
  ratedPressure: {
    forms: phrase`pressure it is made for|Made for|rated pressure`,
    meaning: phrase`The gauge pressure its maker allows; plain jars are made for none.`,
  },
  coldStart: {
    forms: phrase`cold start|`,
    meaning: phrase`Cold or frozen fruit chills the jar: until it is warm again, little ferments.`,
  },
  equivalentHours: {
    forms: phrase`time at temperature|equivalent hours|hours at`,
    meaning: phrase`Hours that would have done as much at one warmth, so that warm and cool weeks compare.`,
  },
  fittedFall: {
    forms: phrase`fitted fall|fitted`,
    meaning: phrase`A smooth line through the readings: how the sugar most likely fell between them.`,
  },
  typicalMiss: { forms: phrase`typical miss|`, meaning: phrase`How far a reading usually lies from the fitted line.` },
  mould: {
    forms: phrase`mould|`,
    meaning: phrase`Fuzzy or coloured growth on top: the whole jar is thrown away.`,
  },
  filmYeast: {
    forms: phrase`film yeast|a film on top`,
    meaning: phrase`A flat, wet, cream-coloured skin without fuzz. Not mould; where you can’t tell, discard.`,
  },
} as const satisfies Readonly<Record<string, TermEntry>>;
