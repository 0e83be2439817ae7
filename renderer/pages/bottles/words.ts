import { phrase } from '#core/words/phrase.ts';

export const words = {
  title: phrase`Bottles`,
  lead: phrase`What stands in bottles, when it was chilled, and how it poured.`,
  above: phrase`Bases`,
  waiting: phrase`Waiting to be tried`,
  done: phrase`All opened`,
  jar: (label: string, question: string) => phrase`Jar ${label}, ${question}`,
  batch: (name: string, version: number) => phrase`${name}, version ${version}`,
  empty: {
    title: phrase`Nothing is bottled yet`,
    line: phrase`Bottle a jar from its own page, or a batch from its house recipe. The pressure that the sugar left can make is shown before you close a bottle.`,
    toTrials: phrase`To the trials`,
    toRecipes: phrase`To the house recipes`,
  },
} as const;
