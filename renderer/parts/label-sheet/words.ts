import { phrase } from '#core/words/phrase.ts';
import type { LabelMedium } from './label-draft.ts';
import type { GridName, LabelField } from './label-grids.ts';

const media: Readonly<Record<LabelMedium, string>> = {
  a4: phrase`a sheet, A4`,
  letter: phrase`a sheet, US letter`,
  strip: phrase`a strip, from a label printer`,
};

const fields: Readonly<Record<LabelField, string>> = {
  columns: phrase`Labels beside each other`,
  rows: phrase`Labels below each other`,
  width: phrase`Width of a label`,
  height: phrase`Height of a label`,
  left: phrase`Margin on the left`,
  top: phrase`Margin at the top`,
  across: phrase`Gap beside a label`,
  down: phrase`Gap below a label`,
};

function gridWords(across: string, down: string): string {
  return phrase`${across} across, ${down} down`;
}

export const words = {
  medium: phrase`Print on`,
  media,
  grid: phrase`Labels on the sheet`,
  own: phrase`a sheet of my own measures`,
  gridNamed: (grid: GridName) => gridWords(...(grid.split('×') as [string, string])),
  unit: phrase`Measured in`,
  units: { mm: phrase`millimetres`, in: phrase`inches` },
  fields,
  withUnit: (name: string, unit: string) => `${name}, ${unit}`,
  first: phrase`Start at label number`,
  firstHint: phrase`For a sheet that is half used: count along the rows from the upper left.`,
  notCount: (most: number) => phrase`Write a whole number from 1 to ${most}.`,
  notSize: (width: string, height: string, most: string) =>
    phrase`To be read, a label must be at least ${width} wide and ${height} high; at most ${most}.`,
  notGap: (most: string) => phrase`Write a length from 0 to ${most}.`,
  tooWide: (columns: number, width: string, needs: string, has: string) =>
    columns === 1
      ? phrase`A label ${width} wide needs ${needs} with its margin; the paper is ${has} wide.`
      : phrase`${columns} labels beside each other, each ${width} wide, need ${needs} with margin and gaps; the paper is ${has} wide.`,
  tooHigh: (rows: number, height: string, needs: string, has: string) =>
    rows === 1
      ? phrase`A label ${height} high needs ${needs} with its margin; the paper is ${has} high.`
      : phrase`${rows} labels below each other, each ${height} high, need ${needs} with margin and gaps; the paper is ${has} high.`,
  notFirst: (cells: number) => phrase`This sheet has labels 1 to ${cells}.`,
  notYet: phrase`Nothing to print yet: see what is marked above.`,
  sheets: (labels: number, sheets: number) =>
    labels === 1
      ? sheets === 1
        ? phrase`1 label on 1 sheet.`
        : phrase`1 label on ${sheets} sheets.`
      : sheets === 1
        ? phrase`${labels} labels on 1 sheet.`
        : phrase`${labels} labels on ${sheets} sheets.`,
  strips: (labels: number) =>
    labels === 1 ? phrase`1 label, one after the other.` : phrase`${labels} labels, one after the other.`,
  printHint: phrase`In the print window choose the same paper, no margins and a scale of 100 %. Try it on plain paper first and hold it against the labels. For a PDF choose “Save as PDF”.`,
  sheet: (number: number, all: number) => phrase`Sheet ${number} of ${all}`,
  preview: phrase`As it will be printed`,
} as const;
