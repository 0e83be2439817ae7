import { phrase } from '#core/words/phrase.ts';

export const words = {
  title: phrase`Taken away`,
  tape: phrase`Taken away`,
  /** Blind: a code, never a jar. */
  sentence: (code: string, why: string) =>
    phrase`Cup ${code} is taken away: its jar was discarded (${why}). Take it from the table and don’t taste it. What was scored of it is kept and not counted.`,
  /** For the one who pours. */
  pouring: (code: string, label: string, why: string) =>
    phrase`Don’t pour jar ${label} (code ${code}): it was discarded (${why}). Take its cups from the table.`,
  row: (why: string) => phrase`Its jar was discarded (${why}): don’t taste it. What was scored of it isn’t counted.`,
} as const;
