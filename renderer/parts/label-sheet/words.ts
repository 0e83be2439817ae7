import type { LabelMedium } from './label-draft.ts';
import type { GridName, LabelField } from './label-grids.ts';

const media: Readonly<Record<LabelMedium, string>> = {
  a4: 'a sheet, A4',
  letter: 'a sheet, US letter',
  strip: 'a strip, from a label printer',
};

const fields: Readonly<Record<LabelField, string>> = {
  columns: 'Labels beside each other',
  rows: 'Labels below each other',
  width: 'Width of a label',
  height: 'Height of a label',
  left: 'Margin on the left',
  top: 'Margin at the top',
  across: 'Gap beside a label',
  down: 'Gap below a label',
};

export const words = {
  medium: 'Print on',
  media,
  grid: 'Labels on the sheet',
  own: 'a sheet of my own measures',
  gridNamed: (grid: GridName) => `${grid.replace('×', ' beside each other, ')} below`,
  unit: 'Measured in',
  units: { mm: 'millimetres', in: 'inches' },
  fields,
  withUnit: (name: string, unit: string) => `${name}, ${unit}`,
  first: 'Start at label number',
  firstHint: 'For a sheet that is half used: count along the rows from the upper left.',
  notCount: (most: number) => `Write a whole number from 1 to ${most}.`,
  notSize: (width: string, height: string, most: string) =>
    `To be read, a label must be at least ${width} wide and ${height} high; at most ${most}.`,
  notGap: (most: string) => `Write a length from 0 to ${most}.`,
  tooWide: (columns: number, width: string, needs: string, has: string) =>
    `${columns === 1 ? `A label ${width} wide needs ${needs} with its margin` : `${columns} labels beside each other, each ${width} wide, need ${needs} with margin and gaps`}; the paper is ${has} wide.`,
  tooHigh: (rows: number, height: string, needs: string, has: string) =>
    `${rows === 1 ? `A label ${height} high needs ${needs} with its margin` : `${rows} labels below each other, each ${height} high, need ${needs} with margin and gaps`}; the paper is ${has} high.`,
  notFirst: (cells: number) => `This sheet has labels 1 to ${cells}.`,
  notYet: 'Nothing to print yet: see what is marked above.',
  sheets: (labels: number, sheets: number) =>
    `${labels === 1 ? '1 label' : `${labels} labels`} on ${sheets === 1 ? '1 sheet' : `${sheets} sheets`}.`,
  strips: (labels: number) => `${labels === 1 ? '1 label' : `${labels} labels`}, one after the other.`,
  printHint:
    'In the print window choose the same paper, no margins and a scale of 100 %. Try it on plain paper first and hold it against the labels. For a PDF choose “Save as PDF”.',
  sheet: (number: number, all: number) => `Sheet ${number} of ${all}`,
  preview: 'As it will be printed',
} as const;
