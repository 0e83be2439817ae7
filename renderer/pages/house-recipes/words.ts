import { phrase } from '#core/words/phrase.ts';

export const words = {
  title: phrase`House recipes`,
  lead: phrase`What you decided to make again, each version with the trial it came from.`,
  empty: {
    title: phrase`No house recipe yet`,
    line: phrase`Once a tasting has shown which jar to keep, it becomes a house recipe: scaled to your batch, versioned, with the way back to every score.`,
  },
} as const;
