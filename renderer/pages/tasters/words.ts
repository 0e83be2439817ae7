import { phrase } from '#core/words/phrase.ts';

export const words = {
  title: phrase`Tasters`,
  lead: phrase`Who tastes, and what each of them avoids. A serving order warns when a sample holds it.`,
  add: phrase`Add a taster`,
  change: phrase`Change`,
  remove: phrase`Remove`,
  removed: (name: string) => phrase`${name} is in the bin.`,
  empty: {
    title: phrase`Nobody tastes yet`,
    line: phrase`Add the people who will taste: three or four friends already tell more than one. Their scores stay with their name, for you alone.`,
  },
} as const;
