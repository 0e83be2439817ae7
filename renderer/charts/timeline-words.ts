import { phrase } from '#core/words/phrase.ts';

export const timelineWords = {
  title: phrase`From start to tasting`,
  scale: phrase`a lane for each jar`,
  tastings: phrase`tasting`,
  marks: phrase`What the marks mean`,
  description: phrase`The same entries stand in the table that goes with the chart.`,
  caption: phrase`From start to tasting: everything in order`,
  key: [
    phrase`open bar: as planned`,
    phrase`full bar: as it stood`,
    phrase`circle: reading`,
    phrase`triangle: seen`,
    phrase`plus: sip`,
    phrase`square: photo`,
    phrase`bar’s end: pulled or strained, a cross: discarded`,
    phrase`diamond: tasting, open while it is blind`,
  ],
  week: (number: number) => phrase`week ${number}`,
  weekKey: phrase`fine line: a week begins`,
  kinds: { reading: phrase`reading`, sighting: phrase`seen`, sip: phrase`sip`, photo: phrase`photo` },
  ends: { pulled: phrase`pulled`, strained: phrase`strained`, discarded: phrase`discarded` },
  started: phrase`started`,
  plannedStart: phrase`planned start`,
  plannedPull: phrase`planned pull`,
  tasting: (name: string, isOpen: boolean) =>
    isOpen ? phrase`tasting “${name}” (open)` : phrase`tasting “${name}” (revealed)`,
  when: phrase`When`,
  jar: phrase`Jar`,
  what: phrase`What`,
  all: '–',
} as const;
