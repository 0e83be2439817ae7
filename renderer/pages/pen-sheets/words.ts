import { phrase } from '#core/words/phrase.ts';
import { ordinal } from '#renderer/charts/place-chart-data.ts';
import { counted } from '#renderer/format/counted.ts';

export const words = {
  title: phrase`Sheets to fill in by pen`,
  lead: phrase`One page for each taster: their cups in their order, by code alone. Type the answers in afterwards, on the taster’s sheet.`,
  print: phrase`Print sheets`,
  printHint: phrase`In the print window choose the same paper, no margins and a scale of 100 %. For a PDF choose “Save as PDF”.`,
  pages: (tasters: number) => phrase`${counted(tasters, 'taster')}, one page each.`,
  grow: (tasters: number) =>
    phrase`${counted(tasters, 'taster')}. So many cups may take more than one page each; look at it before printing.`,
  preview: phrase`As it will be printed`,
  sheetOf: (name: string) => phrase`Sheet of ${name}`,
  date: phrase`Date`,
  doScales: phrase`Taste from the first cup to the last, water in between. In each line cross the box that fits; leave empty what you can’t tell.`,
  doTable: phrase`Taste from the first cup to the last, water in between. Write a figure in each box; leave empty what you can’t tell.`,
  doPlaces: phrase`Taste all cups from the first to the last, water in between; then write their codes in order, the best first.`,
  sitting: (number: number) => phrase`Sitting ${number}. Take a break before it.`,
  cup: phrase`Cup`,
  remarks: phrase`Remarks`,
  place: (place: number) => (place === 1 ? phrase`1st, the best` : ordinal(place)),
  yourOrder: phrase`Your order`,
  yourCups: phrase`Your cups, first to last`,
  tieHint: phrase`Only if you truly can’t tell two apart, write both on one line.`,
} as const;
