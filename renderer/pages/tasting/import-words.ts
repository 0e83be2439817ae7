import { counted, joined } from '#renderer/format/words.ts';
import { justAboutRightWords } from '#shared/just-about-right-words.ts';

export const importWords = {
  title: 'Paste a table of scores',
  lead: 'From a spreadsheet: mark the cells with their heading row, copy, and paste them here. Nothing is kept until you say so.',
  paste: 'The table',
  pasteHint: (kinds: { isRanked: boolean; isRepeated: boolean; steps: readonly string[] }) =>
    [
      kinds.isRanked
        ? 'One row a sample, with the columns taster, code and place; 1 is the best. Write 2= where two samples share a place on purpose.'
        : 'One row a sample with a column for each attribute, or one row a score with the columns taster, sample, attribute, score.',
      'A sample is named by its blind code, never by its jar.',
      ...(kinds.steps.length === 0
        ? []
        : [
            `For ${joined(kinds.steps)} write −2 to 2, from “${justAboutRightWords[0]}” over 0, “${justAboutRightWords[2]}”, to “${justAboutRightWords[4]}”, or the words themselves.`,
          ]),
      ...(kinds.isRepeated
        ? ['A column replicate says which serving; a row without takes the first one that the table leaves free.']
        : []),
    ].join(' '),
  file: 'Or choose a file (CSV or TSV)',
  example: 'Taster\tCode\ttang\tfizz\nAnn\t274\t6\t4,5',
  rankedExample: 'Taster\tCode\tplace\nAnn\t274\t2',
  reading: 'Reading the table…',
  columns: 'What each column is',
  columnsAsk: 'Not every column name is understood. Say what each column is, or leave it out.',
  column: (head: string, position: number) => (head === '' ? `Column ${position + 1}, no name` : `Column “${head}”`),
  leaveOut: 'leave it out',
  unknown: (head: string) => `not understood: ${head}`,
  fields: {
    taster: 'the taster',
    sample: 'the sample (code)',
    attribute: 'the attribute’s name',
    score: 'the score',
    replicate: 'which serving',
  },
  preview: 'What would happen',
  rows: (rows: number) => `${counted(rows, 'row')} under the heading.`,
  good: (count: number) =>
    count === 1 ? '1 score can be taken.' : `${count.toLocaleString('en')} scores can be taken.`,
  bad: (count: number) =>
    count === 1
      ? '1 place in the table can’t be taken:'
      : `${count.toLocaleString('en')} places in the table can’t be taken:`,
  refused: 'What can’t be taken, and why',
  row: 'Row',
  where: 'Column',
  why: 'Why',
  cells: (count: number) => `(${count} scores)`,
  more: (count: number) => `and ${count.toLocaleString('en')} more.`,
  nothingYet: 'Nothing has been changed yet.',
  mend: 'Mend the table and paste it again, or take what is good and leave the rest out.',
  takeAll: (count: number) => (count === 1 ? 'Take this score' : `Take all ${count.toLocaleString('en')} scores`),
  takeGood: (good: number, rows: number) =>
    `Take the ${good === 1 ? 'one good score' : `${good.toLocaleString('en')} good scores`}, leave ${counted(rows, 'row')} out`,
  takeGoodHeading: (good: number) =>
    `Take the ${good === 1 ? 'one good score' : `${good.toLocaleString('en')} good scores`}, leave the rest out`,
  none: 'Nothing in this table can be taken as it is.',
  taken: (count: number) => (count === 1 ? 'One score is kept.' : `${count.toLocaleString('en')} scores are kept.`),
  closed: 'This tasting is closed; no score can be added.',
} as const;
