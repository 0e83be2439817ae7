import { phrase } from '#core/words/phrase.ts';

export const words = {
  instead: (amount: string) => phrase`Make it ${amount}`,
  meant: (amount: string) => phrase`I mean ${amount}`,
  understood: (amount: string) => phrase`Understood: ${amount}`,
} as const;
