import { counted, joined } from '#renderer/format/words.ts';
import type { Lack } from './sheet-progress.ts';

function lackWords({ code, attributes, isWhole }: Lack): string {
  return isWhole ? code : `${code} (${joined(attributes)})`;
}

export const words = {
  open: 'Open: blind until it is closed.',
  closed: 'Closed: the codes are revealed.',
  backToTasting: 'Back to the tasting',
  notAsked: 'not asked',
  served: 'Served at',
  each: 'Of each jar',
  repeats: 'Each sample served',
  times: (count: number) => (count === 1 ? 'once' : `${count} times`),
  held: 'Built',

  backToTrial: 'The trial’s tastings',
  aloneLine:
    'One taster: you pour and you taste. The guided way below keeps you blind all the same: codes under the cups, cups shuffled, codes read only at the end.',
  toAlone: 'I taste alone',

  before: 'Before pouring',
  noWarnings:
    'Nobody here avoids anything that the pantry knows of. Ask all the same: it knows only what was written down.',
  pourTitle: 'Pouring list',
  pourLead: 'Which code is which jar, and the order for each taster. Only for the one who pours.',
  pourLine:
    'One person pours and does not taste in this round. Write each code on its cups, then serve each taster in their own order.',
  pourGate: 'This list gives the game away. Open it only if you pour, and away from the tasters’ eyes.',
  pourOpen: 'I pour: show the list',
  pourHide: 'Hide the list',
  print: 'Print',
  codes: 'Which jar goes into which cups',
  code: 'Code',
  jar: 'Jar',
  level: 'Level',
  cups: 'Cups',
  amount: 'Pour',
  orders: 'In which order each taster is served',
  taster: 'Taster',
  order: 'Order, first to last',
  sitting: (number: number, all: number) => (all === 1 ? 'Order, first to last' : `Sitting ${number}`),
  toPour: 'The pouring list',
  toStickers: 'Print stickers',
  toPenSheets: 'Print sheets',

  sheets: 'Sheets',
  sheetsLine: 'Each taster fills in their own. A half-filled sheet is kept as it is.',
  sheetOf: (name: string) => `Sheet of ${name}`,
  ofExpected: (scores: number, expected: number) => `${scores} of ${expected}`,
  complete: 'complete',
  missing: (lacks: readonly Lack[]) => `still to come: ${joined(lacks.map(lackWords))}`,
  missedSamples: (codes: readonly string[]) => `missed ${joined(codes)}`,
  allIn: 'Every sheet is complete.',
  waiting: (names: readonly string[]) => `Waiting for ${joined(names)}.`,

  toImport: 'Paste a table of scores',
  closeTitle: 'Close and reveal',
  closeLine:
    'Closing shows which code was which jar, and what was tasted becomes findings. After that nothing can be added or changed: nobody can taste blind a second time.',
  close: 'Close and reveal…',
  closeAsk: 'Close this tasting?',
  closeAskLine: 'This can’t be undone. The codes will be seen, and the sheets stay as they are.',
  closeMissing: (count: number) =>
    count === 1 ? 'One score is still missing; it stays empty.' : `${count} scores are still missing; they stay empty.`,
  closeNow: 'Close and reveal now',
  keepOpen: 'Keep it open',
  closedNow: 'Closed. Here is what the scores say.',
  toFindings: 'To the findings',
  revealed: 'Which code was which jar',
  remarks: 'What the tasters said',
  remove: 'Remove this tasting',
  removed: 'The tasting is in the bin.',

  sheetLead: 'Taste from the first row to the last. Rinse with water in between.',
  keys: 'A digit scores, Enter goes on, arrows move, Backspace takes back. Type 1 then 0 for ten, a comma or point for halves.',
  scale: (low: number, high: number) => `${low}–${high}`,
  kept: (kept: number, all: number) => `${kept} of ${all} kept`,
  keeping: 'keeping…',
  notKept: (count: number) => `${counted(count, 'score')} could not be kept.`,
  leftUnkept: (taster: string, count: number) =>
    `${counted(count, 'score')} on the sheet of ${taster} could not be kept. Open the sheet and type ${count === 1 ? 'it' : 'them'} again.`,
  again: 'Try again',
  remarkOn: (code: string) => `Remark on ${code}`,
  remark: 'Remark',
  miss: 'Missed it',
  missed: 'Missed',
  notMissed: 'I tasted it after all',
  missedLine: 'not tasted, left empty',
  sheetFull: 'Every sample has its scores. Thank you.',
  stillMissing: (lacks: readonly Lack[]) => `Still empty: ${joined(lacks.map(lackWords))}.`,
  youMissed: (codes: string) => `Missed and left empty: ${codes}.`,
  sheetEnd: 'That was the last sample.',
  rowDone: (code: string) => `Sample ${code} is complete.`,
  steps: (names: readonly string[]) => `The five steps for ${joined(names)}`,
  asked: 'Asked',
  askedRanked: 'the order, best first',
  askedScored: (names: readonly string[]) => joined(names),
  placesGiven: 'Which place each taster gave',
  placesLine: '1 is the best. What the order says as a whole, and how far the tasters agree, stands in Findings.',
  stepsGiven: (name: string) => `Just about right: ${name}`,
  /** Over jars of several trials a label may stand twice: then the code tells them apart. */
  jarHead: (label: string, level: string, code: string | null) =>
    code === null ? `${label}, ${level}` : `${label}, ${level} (${code})`,
  noAnswer: '–',
  hedonic: 'The nine words of liking',
  closedSheet: 'This tasting is closed: the sheet can be read, not changed.',
  notHere: 'This taster is not part of this tasting.',
  place: (place: number, all: number) => `${place} of ${all}`,
  restBefore: (sitting: number) => `Sitting ${sitting}: take a break before it.`,
} as const;
