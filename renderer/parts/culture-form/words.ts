import { phrase } from '#core/words/phrase.ts';

export const words = {
  name: phrase`Name`,
  kind: phrase`Kind`,
  kindHint: phrase`Water kefir, kombucha, ginger bug …`,
  weight: phrase`Weight`,
  weightHint: { metric: phrase`Drained, such as 210 g.`, us: phrase`Drained, such as 7 1/2 oz.` },
  rests: phrase`Where it rests`,
  restsHint: phrase`Such as fridge door. In the cold it is refreshed about every two weeks (common practice, no source).`,
  refresh: phrase`Refresh it every`,
  refreshHint: phrase`Such as 10 days; empty: the usual.`,
  note: phrase`Note`,
  keep: phrase`Keep`,
  kept: phrase`Kept.`,
} as const;
