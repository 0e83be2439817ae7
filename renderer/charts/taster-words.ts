import { phrase } from '#core/words/phrase.ts';

export const tasterWords = {
  taster: phrase`Taster`,
  scores: phrase`Scores`,
  lowest: phrase`Lowest`,
  highest: phrase`Highest`,
  mean: phrase`Mean`,
  spread: phrase`Spread (standard deviation)`,
  interval: phrase`95 % interval`,
  shared: phrase`Samples shared`,
  agreement: phrase`Agreement`,
  aside: phrase`not counted`,
  useTitle: (attribute: string) => phrase`${attribute}: how the scale was used`,
  useScale: (low: number, high: number) => phrase`scored ${low} to ${high}`,
  useKey: phrase`Pale band: lowest to highest score. Diamond: the mean, line its 95 % interval. Open: not counted.`,
  useCaption: (attribute: string) => phrase`${attribute}: how each taster used the scale`,
  useAxis: (attribute: string) => phrase`${attribute} (points)`,
  agreeTitle: (attribute: string) => phrase`${attribute}: who goes with the others`,
  agreeScale: phrase`correlation, −1 to 1`,
  agreeKey: phrase`Diamond: how a taster’s scores move with the mean of the others’ (1: alike, 0: not at all, below 0: against), line its 95 % interval. Few samples make it wide; three give none.`,
  agreeCaption: (attribute: string) => phrase`${attribute}: how far each taster agrees with the others`,
  agreeAxis: phrase`agreement with the others (correlation)`,
  untold: (shared: number) =>
    shared < 3 ? phrase`three samples or more are needed` : phrase`nothing varies: it can’t be told`,
} as const;
