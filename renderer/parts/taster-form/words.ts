import { phrase } from '#core/words/phrase.ts';

export const words = {
  name: phrase`Name`,
  avoids: phrase`Avoids`,
  avoidsAlcohol: phrase`Avoids alcohol`,
  note: phrase`Note`,
  keep: phrase`Keep`,
  kept: phrase`Kept.`,
} as const;
