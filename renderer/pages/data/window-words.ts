import { phrase } from '#core/words/phrase.ts';

export const windowWords = {
  title: phrase`This window`,
  theme: phrase`Light or dark`,
  themes: { system: phrase`as the system has it`, light: phrase`light`, dark: phrase`dark` },
  hours: phrase`Hours`,
  hourWays: { system: phrase`as the system has it`, '24': phrase`24 hours: 17:30`, '12': phrase`12 hours: 5:30 pm` },
  language: phrase`Language`,
  languageHint: phrase`The page is read anew when you choose.`,
  languageOfSystem: phrase`as the system has it`,
  decimal: phrase`Decimals`,
  decimalWays: { system: phrase`as the system has it`, '.': phrase`a point: 2.5 g`, ',': phrase`a comma: 2,5 g` },
  firstDay: phrase`A week begins on`,
  firstDays: {
    system: phrase`the system’s day`,
    monday: phrase`Monday`,
    saturday: phrase`Saturday`,
    sunday: phrase`Sunday`,
  },
} as const;
