import { ordinal } from '#renderer/charts/place-chart-data.ts';
import { counted } from '#renderer/format/words.ts';

export const words = {
  title: 'Sheets to fill in by pen',
  lead: 'One page for each taster: their cups in their order, by code alone. Type the answers in afterwards, on the taster’s sheet.',
  print: 'Print sheets',
  printHint:
    'In the print window choose the same paper, no margins and a scale of 100 %. For a PDF choose “Save as PDF”.',
  whom: 'For whom',
  everybody: 'everybody',
  pages: (tasters: number) => `${counted(tasters, 'taster')}, one page each.`,
  grow: (tasters: number) =>
    `${counted(tasters, 'taster')}. So many cups may take more than one page each; look at it before printing.`,
  preview: 'As it will be printed',
  sheetOf: (name: string) => `Sheet of ${name}`,
  date: 'Date',
  doScales:
    'Taste from the first cup to the last, water in between. In each line cross the box that fits; leave empty what you can’t tell.',
  doTable:
    'Taste from the first cup to the last, water in between. Write a figure in each box; leave empty what you can’t tell.',
  doPlaces:
    'Taste all cups from the first to the last, water in between; then write their codes in order, the best first.',
  sitting: (number: number) => `Sitting ${number}. Take a break before it.`,
  cup: 'Cup',
  remarks: 'Remarks',
  place: (place: number) => (place === 1 ? '1st, the best' : ordinal(place)),
  yourOrder: 'Your order',
  yourCups: 'Your cups, first to last',
  tieHint: 'Only if you truly can’t tell two apart, write both on one line.',
} as const;
