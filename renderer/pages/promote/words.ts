import type { Sureness } from '#core/trial/sureness.ts';
import { phrase } from '#core/words/phrase.ts';

const surely: Readonly<Record<Sureness, string>> = {
  very: phrase`very sure`,
  quite: phrase`quite sure`,
  fairly: phrase`fairly sure`,
  unclear: phrase`not sure`,
  unknown: phrase`not sure`,
};

export const words = {
  which: phrase`Which level becomes the house recipe?`,
  chosenByPanel: (level: string, mean: string, sureness: Sureness) =>
    phrase`“${level}” is chosen for you: the panel liked it best (${mean}), and is ${surely[sureness]} that the levels were not all liked alike. You may choose another.`,
  closest: (level: string, share: string) =>
    phrase`“${level}” is chosen for you: it comes closest to what you wished for, first in ${share} redrawn panels. You may choose another.`,
  ranked: (sentence: string) => phrase`The panel put the jars in order. ${sentence} Choose the level.`,
  panelUnsure: phrase`The panel doesn’t say clearly which level is best, so nothing is chosen for you.`,
  sipsOnly: phrase`No panel has tasted this trial. You may go by your own sips; the recipe will say so.`,
  notClosed: phrase`A tasting of this trial is not closed yet: it may be worth waiting for. You may still write a level down; the recipe will say that no panel stands behind it.`,
  nothing: phrase`Nobody has tasted this trial yet. You may still write a level down; the recipe will say so.`,
  control: phrase`control`,
  noJar: phrase`none of its jars was started and kept`,
  liking: (mean: string) => phrase`liking ${mean}`,
  placed: (mean: string) => phrase`place ${mean} on average`,
  sipped: (value: string) => phrase`your last sip: liking ${value}`,
  notTasted: phrase`not tasted`,
  jars: (labels: string, count: number) => `${count === 1 ? phrase`jar` : phrase`jars`} ${labels}`,
  form: phrase`Give it a name`,
  name: phrase`Name of the house recipe`,
  nameHint: phrase`The same name again makes the next version of that recipe.`,
  why: phrase`Why this one`,
  whyHint: phrase`One line for the person who reads it next year. May stay empty.`,
  becomes: (name: string, version: number) => phrase`“${name}” exists: this becomes its version ${version}.`,
  same: phrase`Its formula is the same as that of the version before.`,
  write: phrase`Write it down`,
  writing: phrase`Writing…`,
  done: (name: string, version: number) => phrase`“${name}” is a house recipe now, version ${version}.`,
  needsName: phrase`Give the recipe a name.`,
  needsLevel: phrase`Choose a level first.`,
  preview: phrase`What will be written down`,
  choose: phrase`Choose a level to see it.`,
  formula: phrase`The formula`,
  held: phrase`How it is kept, and what was held equal`,
  target: phrase`How it should taste`,
  chain: phrase`Where it comes from`,
} as const;
