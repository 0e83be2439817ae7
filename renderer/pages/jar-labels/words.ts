import { phrase } from '#core/words/phrase.ts';

export const words = {
  title: phrase`Jar labels`,
  lead: phrase`One for each jar: its letter, its level, when it starts and is pulled, and a code that a telephone reads.`,
  back: phrase`The trial`,
  which: phrase`Which jars`,
  all: phrase`All`,
  none: phrase`None`,
  jar: (label: string, level: string) => `${label}: ${level}`,
  noJars: phrase`Tick at least one jar.`,
  noneAtAll: phrase`This trial has no jars left to label: all were discarded.`,
  print: phrase`Print labels`,
  start: (at: string) => phrase`Start ${at}`,
  pull: (at: string) => phrase`Pull ${at}`,
  control: phrase`control`,
  closed: phrase`Closed: gas builds up. Keep it away from faces, open with care.`,
  qr: (label: string) => phrase`Code of jar ${label}`,
} as const;
