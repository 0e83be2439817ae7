import { phrase } from '#core/words/phrase.ts';
import type { TermEntry } from './term-entry.ts';

/** Words of the figures behind a finding, for those who want to look. */
export const figureTermWords = {
  mean: { forms: phrase`mean|means`, meaning: phrase`All scores added up, divided by how many there are.` },
  interval: {
    forms: phrase`95 % interval|interval|intervals|95 % intervals`,
    meaning: phrase`Where the truth most likely lies: such ranges hold it 95 times in 100.`,
  },
  band: {
    forms: phrase`95 % band|95 % bands|band|bands`,
    meaning: phrase`The room around a line in which the true line most likely runs.`,
  },
  spread: {
    forms: phrase`Spread|spread (standard deviation)|standard deviation`,
    meaning: phrase`How far scores lie from each other: about two of three are this near to the mean.`,
  },
  letters: {
    forms: phrase`Alike|share a letter|letters`,
    meaning: phrase`Levels that share a letter were not told apart by this panel.`,
  },
  pairs: { forms: phrase`Pair|Pairs|pairs`, meaning: phrase`Two levels held against each other.` },
  tukey: {
    forms: phrase`Tukey–Kramer|Tukey`,
    meaning: phrase`Holds each level against each other, and is stricter the more pairs there are.`,
  },
  dunnett: {
    forms: phrase`Dunnett|`,
    meaning: phrase`Holds each level against the control alone, and is stricter the more levels there are.`,
  },
  f: {
    forms: phrase`F|`,
    meaning: phrase`How much more the levels differ than luck alone would make them; about 1 says nothing.`,
  },
  chance: {
    forms: phrase`Chance|chance of the slope|chance of the bend`,
    meaning: phrase`Often called p: how often luck alone would show as much; 0.05 is 1 time in 20.`,
  },
  adjusted: {
    forms: phrase`Adjusted|adjusted|Holm`,
    meaning: phrase`The chance made larger for having asked much: of many questions one stands out by luck.`,
  },
  degreesOfFreedom: {
    forms: phrase`degrees of freedom|`,
    meaning: phrase`How many levels were compared, and how many answers the luck was judged by; more is surer.`,
  },
  slope: { forms: phrase`Slope|slope`, meaning: phrase`How many points more for each day, gram or degree more.` },
  bend: {
    forms: phrase`Bend|bend`,
    meaning: phrase`How the slope itself changes; below zero the curve has a top.`,
  },
  rankSum: {
    forms: phrase`rank sum|rank sums|by order alone`,
    meaning: phrase`The places that all tasters gave a level, added up: small is good.`,
  },
  friedman: {
    forms: phrase`Friedman’s test|Friedman`,
    meaning: phrase`Asks by places alone whether the levels differ at all; large says they do.`,
  },
  kendall: {
    forms: phrase`Kendall’s W|`,
    meaning: phrase`How far the tasters agree on the order: 0 not at all, 1 wholly.`,
  },
  page: {
    forms: phrase`Page’s L|Page’s test|Rising|Falling`,
    meaning: phrase`Asks whether places climb or fall steadily from level to level.`,
  },
  apartFrom: {
    forms: phrase`Apart from|`,
    meaning: phrase`Two levels whose rank sums differ by this much were told apart.`,
  },
  agreement: {
    forms: phrase`agreement|correlation|goes with the others`,
    meaning: phrase`How a taster’s scores move with the others’: 1 alike, 0 not at all, below 0 against.`,
  },
  drivers: {
    forms: phrase`drives liking|`,
    meaning: phrase`Which attributes rise or fall together with liking from jar to jar.`,
  },
  dPrime: {
    forms: phrase`d′|`,
    meaning: phrase`How far apart two drinks taste: 0 is not at all, 1 slight, 2 large.`,
  },
} as const satisfies Readonly<Record<string, TermEntry>>;
