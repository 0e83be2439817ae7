import { phrase } from '#core/words/phrase.ts';

export const words = {
  title: phrase`Photos by day`,
  lead: phrase`Every jar of the trial beside the others, a column for each day on which one was photographed.`,
  jar: phrase`Jar`,
  day: (day: number) => phrase`Day ${day}`,
  what: (label: string, level: string, day: number) => phrase`Jar ${label}, ${level}, day ${day}`,
  none: {
    title: phrase`No photos yet`,
    line: phrase`Photos are added on each jar’s page: a file, a drop or a paste.`,
    back: phrase`To the jars`,
  },
  gone: {
    title: phrase`This trial is not here`,
    line: phrase`It was taken out or undone.`,
    back: phrase`To the trials`,
  },
} as const;
