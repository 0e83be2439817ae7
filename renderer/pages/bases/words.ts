import { phrase } from '#core/words/phrase.ts';

export const words = {
  title: phrase`Bases`,
  lead: phrase`What is split into jars, and the cultures that make it.`,
  bases: phrase`Bases`,
  cultures: phrase`Cultures`,
  startBase: phrase`Start a base`,
  addCulture: phrase`Add a culture`,
  strained: phrase`Strained it`,
  strainedDone: (name: string) => phrase`${name} is strained.`,
  bottles: phrase`Bottles`,
  reviving: phrase`being woken`,
  splitFrom: (name: string) => phrase`split from ${name}`,
  emptyBases: {
    title: phrase`No base yet`,
    line: phrase`A base is the plain first ferment that you split into jars. Note when it was made and how sweet it began: then its age and sugar are known when a trial asks.`,
  },
  emptyCultures: phrase`No culture yet. Add the grains or the mother that your bases start from.`,
} as const;
