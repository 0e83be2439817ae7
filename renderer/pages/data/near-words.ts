import { phrase } from '#core/words/phrase.ts';

export const nearWords = {
  lead: phrase`These kitchens lie in the usual folders: where this one lies, the data folder, home, desktop, documents and downloads. An opened one takes this one’s place in the window; this one stays where it is.`,
  none: phrase`No other kitchen lies in the usual folders.`,
  inFolder: (folder: string) => phrase`Kitchens in ${folder}`,
  facts: (when: string, size: string) => `${when}, ${size}`,
  open: phrase`Open`,
  openOf: (name: string) => phrase`Open ${name}`,
  copy: phrase`Copy its rows`,
  copyOf: (name: string) => phrase`Copy its rows: ${name}`,
  copyInstead: phrase`What can be read of it can be copied into a new kitchen.`,
  more: (count: number, shown: string) => (count === 1 ? phrase`1 more lies there.` : phrase`${shown} more lie there.`),
  older: phrase`Show older ones`,
  unreadable: phrase`These folders may not be read, and were passed over:`,
  choose: phrase`Choose the file…`,
  again: phrase`Look again`,
} as const;
