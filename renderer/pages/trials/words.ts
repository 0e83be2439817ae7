import { phrase } from '#core/words/phrase.ts';

export const words = {
  title: phrase`Trials`,
  lead: phrase`One question each. One thing moves, all else is held.`,
  plan: phrase`Plan a trial`,
  more: phrase`Show more trials`,
  empty: {
    title: phrase`Ask one question`,
    lines: [
      phrase`How many days? How much fruit? Fresh or frozen? A trial answers one such question with a handful of jars from the same base, one of them the control: what you would make today.`,
      phrase`Afterwards you taste them blind, and see how much differs and how sure that is.`,
    ],
  },
} as const;
