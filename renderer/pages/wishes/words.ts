import type { Wish } from './wish.ts';

export const words = {
  title: 'What is wanted',
  lead: 'How should the drink be? Said before the tasting, it keeps the winner honest: afterwards the jars are held against it.',
  wishes: 'The wishes',
  wishesLine: 'Each change is kept at once and can be undone.',
  goal: (attribute: string) => `${attribute}: what is wanted`,
  importance: (attribute: string) => `${attribute}: how much it counts`,
  goals: { none: 'doesn’t matter', more: 'the more, the better', less: 'the less, the better', target: 'just so much' },
  counts: [
    [0.5, 'counts half'],
    [1, 'counts once'],
    [2, 'counts twice'],
    [3, 'counts three times'],
  ],
  countsOther: (times: number) => `counts ${Number(times.toFixed(2))} times`,
  notANumber: 'A number, please.',
  notYet: 'No tasting of this trial is closed yet. Once one is, it says here which level comes closest to your wishes.',
  noWishes: 'Say at least one wish above, and the levels are held against it.',
  before: 'Before you taste',
  beforeLine: 'What your panel will be able to see, with these numbers.',
  samples: 'Samples',
  tasters: 'Tasters',
  replicates: 'Servings of each sample',
} as const;

/** The ends of a wish in words: from where it will not do to where it is fully right. */
export const endWords: Readonly<
  Record<Wish['goal'], { readonly low: string; readonly high: string; readonly target: string }>
> = {
  more: { low: 'Won’t do at', high: 'Fully right from', target: '' },
  less: { low: 'Fully right up to', high: 'Won’t do from', target: '' },
  target: { low: 'Too little at', high: 'Too much from', target: 'Just right at' },
};
