import { phrase } from '#core/words/phrase.ts';

export const words = {
  froth: phrase`froth on top`,
  wrapped: (code: string) => phrase`Sample ${code}, wrapped in paper`,
  wrappedGone: (code: string, why: string) => phrase`Sample ${code}, taken away: its jar was discarded (${why})`,
  takenAway: phrase`taken away`,
  openTasting: (code: string) => phrase`Open the tasting of sample ${code}`,
  wrappedFor: (tasting: string) => phrase`Wrapped for “${tasting}”`,
  wrappedLine: phrase`A tasting is open: the jars stand in paper, each under its blind code, in the order of the codes.`,
  showLabels: phrase`Show the labelled jars`,
  showCodes: phrase`Wrap them again`,
} as const;
