import { phrase } from '#core/words/phrase.ts';
import type { sightingKinds } from '#shared/closed-lists.ts';

export type JarAct = 'start' | 'pull' | 'strain';

export const actWords: Readonly<
  Record<JarAct, { one: string; all: (count: number) => string; done: (jars: string) => string }>
> = {
  start: { one: phrase`Start`, all: (count) => phrase`Start all ${count}`, done: (jars) => phrase`Started ${jars}.` },
  pull: { one: phrase`Pull`, all: (count) => phrase`Pull all ${count}`, done: (jars) => phrase`Pulled ${jars}.` },
  strain: {
    one: phrase`Strain`,
    all: (count) => phrase`Strain all ${count}`,
    done: (jars) => phrase`Strained ${jars}.`,
  },
};

export const words = {
  discard: phrase`Discard…`,
  discardTitle: (label: string) => phrase`Discard jar ${label}`,
  reason: phrase`Why?`,
  reasonHint: phrase`It stays in the trial’s history, and out of tastings.`,
  reasons: [phrase`smells off`, phrase`broken glass`, phrase`mixed up`, 'spilled'],
  discardIt: phrase`Discard it`,
  discarded: (label: string) => phrase`Jar ${label} is discarded.`,
  started: {
    left: (what: string) => phrase`On hand now: ${what}.`,
    short: (what: string) => phrase`More was used than noted of ${what}: count again.`,
    unknown: (what: string) => phrase`Not counted: ${what}.`,
  },
  reading: phrase`Reading`,
  readingHint: phrase`${4.2} brix, pH ${3.4}, 21 c`,
  readBack: phrase`Understood:`,
  log: phrase`Log it`,
  logged: (what: string) => phrase`Logged a reading of ${what}.`,
  phGuidance: phrase`For kombucha the guidance is a pH from ${2.5} to ${4.2} (Niagara Region Public Health, Kombucha best practices). Nothing here foretells a pH: measure it.`,
  gravity: {
    title: phrase`Read with a hydrometer`,
    stem: phrase`The hydrometer is made for`,
    stemHint: phrase`It stands on its paper or in its case.`,
    stems: {
      celsius20: phrase`20 °C`,
      fahrenheit60: phrase`${15.6} °C (60 °F)`,
      asRead: phrase`not corrected: log as read`,
    },
    sample: phrase`Temperature of the sample`,
    sampleHint: phrase`Such as 26 c or 79 f.`,
    inLine: phrase`Empty: the temperature in the line above.`,
    noTemperature: phrase`Logged as read: say the sample’s temperature, and it is corrected to 20 °C.`,
    asRead: phrase`Logged as read, without a correction.`,
    corrected: (to: string, read: string, sample: string, stem: string) =>
      phrase`Corrected to 20 °C: SG ${to} (read ${read} at ${sample}, made for ${stem}).`,
    note: (read: string, sample: string, stem: string) =>
      phrase`Hydrometer read ${read} at ${sample}, made for ${stem}; corrected to 20 °C.`,
  },
  titration: {
    title: phrase`Acidity from a titration`,
    sample: phrase`Sample, in mL`,
    titrant: phrase`Titrant used, in mL`,
    normality: phrase`Titrant strength, in N`,
    normalityHint: phrase`Normality, as on its bottle.`,
    acid: phrase`Given as`,
    acidHint: phrase`Lactic for milky and kefir ferments, acetic for kombucha, the others for fruit. Common practice, no source.`,
    endPoint: phrase`Titrated to`,
    endPointHint: (endPoint: string) => phrase`${endPoint}. Readings to different end points do not compare.`,
    missing: phrase`Write a number.`,
    tooMuch: (grams: number) =>
      phrase`That comes to ${grams} g/L; permitted: 0 to 200. Look at sample and titrant again.`,
    result: (grams: number, acid: string, meq: number, endPoint: string) =>
      phrase`${grams} g/L as ${acid} acid (${meq} meq/L), to ${endPoint}.`,
    note: (titrant: number, normality: number, sample: number, endPoint: string) =>
      phrase`Titrated ${sample} mL with ${titrant} mL of ${normality} N, to ${endPoint}.`,
    log: phrase`Log the acidity`,
  },
  seen: phrase`What do you see?`,
  seenNote: phrase`In your own words`,
  smellChip: phrase`smells of …`,
  smell: phrase`Smells of`,
  smellHint: phrase`Such as vinegar, bread, eggs.`,
  noteSmell: phrase`Note the smell`,
  smellsOf: (what: string) => phrase`smells of ${what}`,
  mistake: phrase`Seen by mistake`,
  mistakeOf: (what: string, at: string) => phrase`Seen by mistake: ${what}, ${at}`,
  corrected: phrase`Corrected: it stays in the diary, struck through.`,
  correctedAt: (at: string, why: string | null) =>
    why === null ? phrase`seen by mistake, corrected ${at}` : phrase`seen by mistake, corrected ${at}: ${why}`,
  isBack: (label: string) => phrase`Jar ${label} is back.`,
  backInto: (tastings: string) => phrase`It counts again in ${tastings}.`,
  staysWithout: (tastings: string) => phrase`${tastings} was revealed without it and stays so.`,
  notMouldTitle: phrase`Was it no mould?`,
  notMouldLine: phrase`Only a mistaken look can be corrected: mould that was there can’t be taken off. Film yeast is a flat, wet, cream-coloured skin without fuzz. When in doubt, leave the jar discarded.`,
  notMouldWhy: phrase`What was it instead?`,
  notMouldReasons: [phrase`film yeast`, phrase`froth`, phrase`a bit of fruit`, phrase`the wrong jar`],
  correctIt: phrase`It was a mistake`,
  outOf: (tastings: string) => phrase`It is taken out of ${tastings}.`,
  noteIt: phrase`Note it`,
  noted: (what: string) => phrase`Noted for ${what}.`,
  mould: phrase`Mould: discard the jar`,
  mouldLine: phrase`Anything fuzzy or coloured on top: throw the whole jar away, also what looks clean below.`,
  moulded: (what: string) => phrase`Mould noted: ${what} is discarded.`,
  mouldOfBase: phrase`Mould in the base`,
  mouldLineOfBase: phrase`Anything fuzzy or coloured on top: throw the whole base and its culture away, and clean the crock.`,
} as const;

/** Sightings to tap, in the order they mostly come. */
export const sightingWords: Readonly<Record<(typeof sightingKinds)[number], string>> = {
  'first-bubbles': phrase`first bubbles`,
  'steady-bubbles': phrase`steady bubbles`,
  'bubbles-slowing': phrase`bubbles slowing`,
  froth: phrase`froth`,
  'fruit-risen': phrase`fruit risen`,
  'fruit-sunk': phrase`fruit sunk`,
  'colour-taken': phrase`colour taken on`,
  'colour-fading': phrase`fruit paler`,
  cloudy: phrase`cloudy`,
  clear: phrase`clear`,
  film: phrase`a film on top`,
  smell: phrase`a new smell`,
  mould: phrase`mould`,
  looked: phrase`looked: nothing new`,
  stirred: phrase`stirred`,
  other: phrase`other`,
};
