export const words = {
  title: 'Bottles',
  lead: 'What stands in bottles, when it was chilled, and how it poured.',
  above: 'Bases',
  waiting: 'Waiting to be tried',
  done: 'All opened',
  jar: (label: string, question: string) => `Jar ${label}, ${question}`,
  batch: (name: string, version: number) => `${name}, version ${version}`,
  empty: {
    title: 'Nothing is bottled yet',
    line: 'Bottle a jar from its own page, or a batch from its house recipe. The pressure that the sugar left can make is shown before you close a bottle.',
    toTrials: 'To the trials',
    toRecipes: 'To the house recipes',
  },
} as const;
