import { phrase } from '#core/words/phrase.ts';

export const words = {
  sip: (label: string) => phrase`A sip of jar ${label}`,
  hint: phrase`Tang, fizz, sweetness, liking: four digits, such as 5637. With a 10, put spaces between: 10 6 3 7. A dash leaves one out.`,
  keep: phrase`Keep this sip`,
  kept: (label: string) => phrase`A sip of jar ${label} is kept.`,
  reads: (said: string) => phrase`That is: ${said}.`,
  note: phrase`A word on it`,
} as const;
