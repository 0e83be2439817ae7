import { phrase } from '#core/words/phrase.ts';

/** The trade's words, each in one line. */
export const termWords = {
  base: phrase`The plain fermented drink that all jars of a trial are filled from.`,
  culture: phrase`The living grains, mother or starter that makes a base.`,
  'first ferment': phrase`Sugar water, tea or juice with the culture in it, until it is strained.`,
  'second ferment': phrase`The strained base with fruit or herbs, in jars.`,
  trial: phrase`A set of jars that differ in one thing, to answer one question.`,
  factor: phrase`The one thing that differs between the jars of a trial.`,
  level: phrase`One setting of that thing: 2 days, 60 g, frozen.`,
  control: phrase`The level that the others are compared with: usually how you make it now.`,
  replicate: phrase`A second jar of the same level: it shows how far jars differ by themselves.`,
  start: phrase`The moment fruit and base come together.`,
  pull: phrase`Taking a jar out to chill or taste: its days are over.`,
  strain: phrase`Taking the fruit out of a jar, or the culture out of a base.`,
  'blind code': phrase`Three digits on a cup, so that nobody knows which jar it is.`,
  sip: phrase`Your own taste of one jar, knowing which it is. Never counted with a panel.`,
  panel: phrase`Those who taste together, blind.`,
  tasting: phrase`One sitting where a panel scores or orders the samples.`,
  'serving order': phrase`Who drinks which cup when; balanced, because the first cup always tastes stronger.`,
  sample: phrase`What is poured from one jar into cups under one blind code.`,
  attribute: phrase`What is scored: tang, fizz, sweetness, liking.`,
  finding: phrase`What a tasting says, with its doubt.`,
  'house recipe': phrase`A level you decided for, written down so that it can be made again.`,
  batch: phrase`One make of a house recipe.`,
  reading: phrase`A measured number: Brix, SG, pH, acidity, temperature.`,
  sighting: phrase`Something seen: bubbles, froth, film, mould.`,
  brix: phrase`Degrees Brix: grams of sugar in 100 g, as an instrument for pure sugar water sees it.`,
  sg: phrase`Specific gravity: how much heavier than water.`,
} as const;

export type TermName = keyof typeof termWords;
