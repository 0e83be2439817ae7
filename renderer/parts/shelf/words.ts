export const words = {
  froth: 'froth on top',
  late: 'past its day',
  wrapped: (code: string) => `Sample ${code}, wrapped in paper`,
  wrappedGone: (code: string, why: string) => `Sample ${code}, taken away: its jar was discarded (${why})`,
  takenAway: 'taken away',
  openTasting: (code: string) => `Open the tasting of sample ${code}`,
  wrappedFor: (tasting: string) => `Wrapped for “${tasting}”`,
  wrappedLine: 'A tasting is open: the jars stand in paper, each under its blind code, in the order of the codes.',
  showLabels: 'Show the labelled jars',
  showCodes: 'Wrap them again',
} as const;
