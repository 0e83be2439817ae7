import { counting } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import { counted } from '#renderer/format/counted.ts';
import { joined } from '#renderer/format/words.ts';
import { justAboutRightWords } from '#shared/just-about-right-words.ts';

export const importWords = {
  title: phrase`Paste a table of scores`,
  lead: phrase`From a spreadsheet: mark the cells with their heading row, copy, and paste them here. Nothing is kept until you say so.`,
  paste: phrase`The table`,
  pasteHint: (kinds: { isRanked: boolean; isRepeated: boolean; steps: readonly string[] }) =>
    [
      kinds.isRanked
        ? phrase`One row a sample, with the columns taster, code and place; 1 is the best. Write 2= where two samples share a place on purpose.`
        : phrase`One row a sample with a column for each attribute, or one row a score with the columns taster, sample, attribute, score.`,
      phrase`A sample is named by its blind code, never by its jar.`,
      ...(kinds.steps.length === 0
        ? []
        : [
            phrase`For ${joined(kinds.steps)} write −2 to 2, from “${justAboutRightWords[0]}” over 0, “${justAboutRightWords[2]}”, to “${justAboutRightWords[4]}”, or the words themselves.`,
          ]),
      ...(kinds.isRepeated
        ? [phrase`A column replicate says which serving; a row without takes the first one that the table leaves free.`]
        : []),
    ].join(' '),
  file: phrase`Or choose a file (CSV or TSV)`,
  example: phrase`Taster\tCode\ttang\tfizz\nAnn\t274\t6\t4,5`,
  rankedExample: phrase`Taster\tCode\tplace\nAnn\t274\t2`,
  reading: phrase`Reading the table…`,
  keeping: phrase`Keeping the scores…`,
  columns: phrase`What each column is`,
  columnsAsk: phrase`Not every column name is understood. Say what each column is, or leave it out.`,
  column: (head: string, position: number) =>
    head === '' ? phrase`Column ${position + 1}, no name` : phrase`Column “${head}”`,
  leaveOut: phrase`leave it out`,
  unknown: (head: string) => phrase`not understood: ${head}`,
  fields: {
    taster: phrase`the taster`,
    sample: phrase`the sample (code)`,
    attribute: phrase`the attribute’s name`,
    score: phrase`the score`,
    replicate: phrase`which serving`,
  },
  preview: phrase`What would happen`,
  rows: (rows: number) => phrase`${counted(rows, 'row')} under the heading.`,
  good: (count: number) =>
    count === 1 ? phrase`1 score can be taken.` : phrase`${counting(count)} scores can be taken.`,
  bad: (count: number) =>
    count === 1
      ? phrase`1 place in the table can’t be taken:`
      : phrase`${counting(count)} places in the table can’t be taken:`,
  refused: phrase`What can’t be taken, and why`,
  row: phrase`Row`,
  where: phrase`Column`,
  why: phrase`Why`,
  cells: (count: number) => phrase`(${count} scores)`,
  more: (count: number) => phrase`and ${counting(count)} more.`,
  nothingYet: phrase`Nothing has been changed yet.`,
  mend: phrase`Mend the table and paste it again, or take what is good and leave the rest out.`,
  takeAll: (count: number) => (count === 1 ? phrase`Take this score` : phrase`Take all ${counting(count)} scores`),
  takeGood: (good: number, rows: number) =>
    good === 1
      ? phrase`Take the one good score, leave ${counted(rows, 'row')} out`
      : phrase`Take the ${counting(good)} good scores, leave ${counted(rows, 'row')} out`,
  takeGoodHeading: (good: number) =>
    good === 1
      ? phrase`Take the one good score, leave the rest out`
      : phrase`Take the ${counting(good)} good scores, leave the rest out`,
  none: phrase`Nothing in this table can be taken as it is.`,
  taken: (count: number) => (count === 1 ? phrase`One score is kept.` : phrase`${counting(count)} scores are kept.`),
  closed: phrase`This tasting is closed; no score can be added.`,
} as const;
