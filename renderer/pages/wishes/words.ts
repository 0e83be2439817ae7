import { phrase } from '#core/words/phrase.ts';
import type { Wish } from './wish.ts';

export const words = {
  title: phrase`What is wanted`,
  lead: phrase`How should the drink be? Said before the tasting, it keeps the winner honest: afterwards the jars are held against it.`,
  wishes: phrase`The wishes`,
  wishesLine: phrase`Each change is kept at once and can be undone.`,
  goal: (attribute: string) => phrase`${attribute}: what is wanted`,
  importance: (attribute: string) => phrase`${attribute}: how much it counts`,
  goals: {
    none: phrase`doesn’t matter`,
    more: phrase`the more, the better`,
    less: phrase`the less, the better`,
    target: phrase`just so much`,
  },
  counts: [
    [0.5, phrase`counts half`],
    [1, phrase`counts once`],
    [2, phrase`counts twice`],
    [3, phrase`counts three times`],
  ],
  countsOther: (times: number) => phrase`counts ${Number(times.toFixed(2))} times`,
  notANumber: phrase`A number, please.`,
  notYet: phrase`No tasting of this trial is closed yet. Once one is, it says here which level comes closest to your wishes.`,
  noWishes: phrase`Say at least one wish above, and the levels are held against it.`,
  before: phrase`Before you taste`,
  beforeLine: phrase`What your panel will be able to see, with these numbers.`,
  samples: phrase`Samples`,
  tasters: phrase`Tasters`,
  replicates: phrase`Servings of each sample`,
} as const;

/** The ends of a wish in words: from where it will not do to where it is fully right. */
export const endWords: Readonly<
  Record<Wish['goal'], { readonly low: string; readonly high: string; readonly target: string }>
> = {
  more: { low: phrase`Won’t do at`, high: phrase`Fully right from`, target: '' },
  less: { low: phrase`Fully right up to`, high: phrase`Won’t do from`, target: '' },
  target: { low: phrase`Too little at`, high: phrase`Too much from`, target: phrase`Just right at` },
};
