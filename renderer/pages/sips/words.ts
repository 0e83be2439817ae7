import { phrase } from '#core/words/phrase.ts';

export const words = {
  title: phrase`Sips`,
  lead: phrase`Your own daily taste of each standing jar, label in sight. Sips stay apart from the panel’s scores.`,
  none: phrase`No jar is standing.`,
  noneLine: phrase`A jar can be sipped once it has been started and until it is discarded.`,
  last: (said: string, when: string) => phrase`Last: ${said} (${when}).`,
} as const;
