import type { sightingKinds } from '#shared/closed-lists.ts';

export type JarAct = 'start' | 'pull' | 'strain';

export const actWords: Readonly<
  Record<JarAct, { one: string; all: (count: number) => string; done: (jars: string) => string }>
> = {
  start: { one: 'Start', all: (count) => `Start all ${count}`, done: (jars) => `Started ${jars}.` },
  pull: { one: 'Pull', all: (count) => `Pull all ${count}`, done: (jars) => `Pulled ${jars}.` },
  strain: { one: 'Strain', all: (count) => `Strain all ${count}`, done: (jars) => `Strained ${jars}.` },
};

export const words = {
  discard: 'Discard…',
  discardTitle: (label: string) => `Discard jar ${label}`,
  reason: 'Why?',
  reasonHint: 'It stays in the trial’s history, and out of tastings.',
  reasons: ['smells off', 'broken glass', 'mixed up', 'spilled'],
  discardIt: 'Discard it',
  discarded: (label: string) => `Jar ${label} is discarded.`,
  started: {
    left: (what: string) => `On hand now: ${what}.`,
    short: (what: string) => `More was used than noted of ${what}: count again.`,
    unknown: (what: string) => `Not counted: ${what}.`,
  },
  reading: 'Reading',
  readingHint: '4.2 brix, pH 3.4, 21 c',
  readBack: 'Understood:',
  log: 'Log it',
  logged: (what: string) => `Logged a reading of ${what}.`,
  phGuidance:
    'For kombucha the guidance is a pH from 2.5 to 4.2 (Niagara Region Public Health, Kombucha best practices). Nothing here foretells a pH: measure it.',
  gravity: {
    title: 'Read with a hydrometer',
    stem: 'The hydrometer is made for',
    stemHint: 'It stands on its paper or in its case.',
    stems: { celsius20: '20 °C', fahrenheit60: '15.6 °C (60 °F)', asRead: 'not corrected: log as read' },
    sample: 'Temperature of the sample',
    sampleHint: 'Such as 26 c or 79 f.',
    inLine: 'Empty: the temperature in the line above.',
    noTemperature: 'Logged as read: say the sample’s temperature, and it is corrected to 20 °C.',
    asRead: 'Logged as read, without a correction.',
    corrected: (to: string, read: string, sample: string, stem: string) =>
      `Corrected to 20 °C: SG ${to} (read ${read} at ${sample}, made for ${stem}).`,
    note: (read: string, sample: string, stem: string) =>
      `Hydrometer read ${read} at ${sample}, made for ${stem}; corrected to 20 °C.`,
  },
  titration: {
    title: 'Acidity from a titration',
    sample: 'Sample, in mL',
    titrant: 'Titrant used, in mL',
    normality: 'Titrant strength, in N',
    normalityHint: 'Normality, as on its bottle.',
    acid: 'Given as',
    acidHint:
      'Lactic for milky and kefir ferments, acetic for kombucha, the others for fruit. Common practice, no source.',
    endPoint: 'Titrated to',
    endPointHint: 'Readings to different end points do not compare.',
    missing: 'Write a number.',
    tooMuch: (grams: number) => `That comes to ${grams} g/L; permitted: 0 to 200. Look at sample and titrant again.`,
    result: (grams: number, acid: string, meq: number, endPoint: string) =>
      `${grams} g/L as ${acid} acid (${meq} meq/L), to ${endPoint}.`,
    note: (titrant: number, normality: number, sample: number, endPoint: string) =>
      `Titrated ${sample} mL with ${titrant} mL of ${normality} N, to ${endPoint}.`,
    log: 'Log the acidity',
  },
  seen: 'What do you see?',
  seenNote: 'In your own words',
  noteIt: 'Note it',
  noted: (what: string) => `Noted for ${what}.`,
  mould: 'Mould: discard the jar',
  mouldLine: 'Anything fuzzy or coloured on top: throw the whole jar away, also what looks clean below.',
  moulded: (what: string) => `Mould noted: ${what} is discarded.`,
  mouldOfBase: 'Mould in the base',
  mouldLineOfBase: 'Anything fuzzy or coloured on top: throw the whole base and its culture away, and clean the crock.',
} as const;

/** Sightings to tap, in the order they mostly come. */
export const sightingWords: Readonly<Record<(typeof sightingKinds)[number], string>> = {
  'first-bubbles': 'first bubbles',
  'steady-bubbles': 'steady bubbles',
  'bubbles-slowing': 'bubbles slowing',
  froth: 'froth',
  'fruit-risen': 'fruit risen',
  'fruit-sunk': 'fruit sunk',
  'colour-taken': 'colour taken on',
  'colour-fading': 'fruit paler',
  cloudy: 'cloudy',
  clear: 'clear',
  film: 'a film on top',
  smell: 'a new smell',
  mould: 'mould',
  looked: 'looked: nothing new',
  stirred: 'stirred',
  other: 'other',
};
