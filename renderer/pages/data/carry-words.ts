import { countWords } from './words.ts';

export const carryWords = {
  title: 'Take along and take in',
  out: 'Everything as files',
  outLine:
    'A new folder beside the kitchen: one table a file for a spreadsheet (CSV, every column described after CSV on the Web) and one JSON that another kitchen can take in. The codes of an open tasting stand in it; history and bin stay here. To give away one trial only, save it from its own page.',
  export: 'Save everything as files',
  exporting: 'Writing the files…',
  exported: (files: string, size: string) => `${files}, ${size} in all, stand in`,
  in: 'A trial or a kitchen from a file',
  inLine:
    'You see first what it would bring. Rows keep their ids: what stands here already is known again, and whatever you changed here stays as it is.',
  file: 'A file with a trial, or the kitchen.json of an export',
  looking: 'Looking at the file…',
  taking: 'Taking it in…',
  tooLarge: 'This file is larger than 40 MB. Take it in from the command line: data:takeIn with its place.',
  cantRead: 'The file can’t be read.',
  nothing: 'Everything in this file stands here already.',
  found: {
    trial: (from: string) => `A trial from “${from}”. It would bring:`,
    kitchen: (from: string) => `The kitchen “${from}”. It would bring:`,
  },
  same: (rows: string) => `${rows} that stand here already`,
  renamed: (name: string, becomes: string) => `“${name}” is taken here: the newcomer is called “${becomes}”`,
  kept: (name: string, what: string) => `${what} “${name}” stands here in another edition: yours stays`,
  more: (count: number) => `and ${count} more that stay as they are here`,
  take: 'Take it in',
  taken: (from: string) => `Taken in from “${from}”. Undo takes all of it out again.`,
} as const;

const inner: Readonly<Record<string, readonly [one: string, many: string]>> = {
  kitchens: ['kitchen’s name and measures', 'kitchens'],
  levels: ['level', 'levels'],
  attributes: ['attribute', 'attributes'],
  samples: ['sample', 'samples'],
  servings: ['serving', 'servings'],
  remarks: ['remark', 'remarks'],
  wishes: ['wish', 'wishes'],
  set_asides: ['taster set aside', 'tasters set aside'],
  discriminations: ['test of two jars', 'tests of two jars'],
  presentations: ['tray', 'trays'],
  recipe_versions: ['version', 'versions'],
  version_sources: ['source of a version', 'sources of versions'],
  stocks: ['amount on hand', 'amounts on hand'],
};

/** What a table’s rows are called. */
export function tableWords(table: string): readonly [string, string] {
  return countWords[table] ?? inner[table] ?? [`row of ${table}`, `rows of ${table}`];
}
