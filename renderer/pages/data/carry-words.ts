import { phrase } from '#core/words/phrase.ts';

export const carryWords = {
  title: phrase`Take along and take in`,
  out: phrase`Everything as files`,
  outLine: phrase`A new folder beside the kitchen: one table a file for a spreadsheet (CSV, every column described after CSV on the Web) and one JSON that another kitchen can take in. The codes of an open tasting stand in it; history and bin stay here. To give away one trial only, save it from its own page.`,
  export: phrase`Save everything as files`,
  exporting: phrase`Writing the files…`,
  exported: (files: string, size: string) => phrase`${files}, ${size} in all, stand in`,
  in: phrase`A trial or a kitchen from a file`,
  inLine: phrase`You see first what it would bring. Rows keep their ids: what stands here already is known again, and whatever you changed here stays as it is.`,
  file: phrase`A file with a trial, or the kitchen.json of an export`,
  looking: phrase`Looking at the file…`,
  taking: phrase`Taking it in…`,
  tooLarge: phrase`This file is larger than 40 MB. Take it in from the command line: data:takeIn with its place.`,
  cantRead: phrase`The file can’t be read.`,
  nothing: phrase`Everything in this file stands here already.`,
  found: {
    trial: (from: string) => phrase`A trial from “${from}”. It would bring:`,
    kitchen: (from: string) => phrase`The kitchen “${from}”. It would bring:`,
  },
  pictures: (count: number) => (count === 1 ? phrase`1 photo’s file` : phrase`${count} photos’ files`),
  same: (rows: string) => phrase`${rows} that stand here already`,
  renamed: (name: string, becomes: string) => phrase`“${name}” is taken here: the newcomer is called “${becomes}”`,
  kept: (name: string, what: string) => phrase`${what} “${name}” stands here in another edition: yours stays`,
  more: (count: number) => phrase`and ${count} more that stay as they are here`,
  take: phrase`Take it in`,
  taken: (from: string) => phrase`Taken in from “${from}”. Undo takes all of it out again.`,
} as const;
