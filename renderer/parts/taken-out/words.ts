export const words = {
  title: 'Taken away',
  tape: 'Taken away',
  /** Blind: a code, never a jar. */
  sentence: (code: string, why: string) =>
    `Cup ${code} is taken away: its jar was discarded (${why}). Take it from the table and don’t taste it. What was scored of it is kept and not counted.`,
  /** For the one who pours. */
  pouring: (code: string, label: string, why: string) =>
    `Don’t pour jar ${label} (code ${code}): it was discarded (${why}). Take its cups from the table.`,
  row: (why: string) => `Its jar was discarded (${why}): don’t taste it. What was scored of it isn’t counted.`,
} as const;
