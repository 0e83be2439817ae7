import type { Sureness } from '#core/trial/sureness.ts';

const surely: Readonly<Record<Sureness, string>> = {
  very: 'very sure',
  quite: 'quite sure',
  fairly: 'fairly sure',
  unclear: 'not sure',
  unknown: 'not sure',
};

export const words = {
  which: 'Which level becomes the house recipe?',
  chosenByPanel: (level: string, mean: string, sureness: Sureness) =>
    `“${level}” is chosen for you: the panel liked it best (${mean}), and is ${surely[sureness]} that the levels were not all liked alike. You may choose another.`,
  closest: (level: string, share: string) =>
    `“${level}” is chosen for you: it comes closest to what you wished for, first in ${share} redrawn panels. You may choose another.`,
  ranked: (sentence: string) => `The panel put the jars in order. ${sentence} Choose the level.`,
  panelUnsure: 'The panel doesn’t say clearly which level is best, so nothing is chosen for you.',
  sipsOnly: 'No panel has tasted this trial. You may go by your own sips; the recipe will say so.',
  notClosed:
    'A tasting of this trial is not closed yet: it may be worth waiting for. You may still write a level down; the recipe will say that no panel stands behind it.',
  nothing: 'Nobody has tasted this trial yet. You may still write a level down; the recipe will say so.',
  control: 'control',
  noJar: 'none of its jars was started and kept',
  liking: (mean: string) => `liking ${mean}`,
  placed: (mean: string) => `place ${mean} on average`,
  sipped: (value: string) => `your last sip: liking ${value}`,
  notTasted: 'not tasted',
  jars: (labels: string, count: number) => `${count === 1 ? 'jar' : 'jars'} ${labels}`,
  form: 'Give it a name',
  name: 'Name of the house recipe',
  nameHint: 'The same name again makes the next version of that recipe.',
  why: 'Why this one',
  whyHint: 'One line for the person who reads it next year. May stay empty.',
  becomes: (name: string, version: number) => `“${name}” exists: this becomes its version ${version}.`,
  same: 'Its formula is the same as that of the version before.',
  write: 'Write it down',
  writing: 'Writing…',
  done: (name: string, version: number) => `“${name}” is a house recipe now, version ${version}.`,
  needsName: 'Give the recipe a name.',
  needsLevel: 'Choose a level first.',
  preview: 'What will be written down',
  choose: 'Choose a level to see it.',
  formula: 'The formula',
  held: 'How it is kept, and what was held equal',
  target: 'How it should taste',
  chain: 'Where it comes from',
} as const;
