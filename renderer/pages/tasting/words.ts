import { shownNumber } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import { counted } from '#renderer/format/counted.ts';
import { joined } from '#renderer/format/words.ts';
import type { Lack } from './sheet-progress.ts';

function lackWords({ code, attributes, isWhole }: Lack): string {
  return isWhole ? code : `${code} (${joined(attributes)})`;
}

export const words = {
  open: phrase`Open: blind until it is closed.`,
  closed: phrase`Closed: the codes are revealed.`,
  backToTasting: phrase`Back to the tasting`,
  notAsked: phrase`not asked`,
  served: phrase`Served at`,
  each: phrase`Of each jar`,
  repeats: phrase`Each sample served`,
  times: (count: number) => (count === 1 ? phrase`once` : phrase`${count} times`),
  held: phrase`Built`,

  backToTrial: phrase`The trial’s tastings`,
  aloneLine: phrase`One taster: you pour and you taste. The guided way below keeps you blind all the same: codes under the cups, cups shuffled, codes read only at the end.`,
  toAlone: phrase`I taste alone`,

  before: phrase`Before pouring`,
  noWarnings: phrase`Nobody here avoids anything that the pantry knows of. Ask all the same: it knows only what was written down.`,
  pourTitle: phrase`Pouring list`,
  pourLead: phrase`Which code is which jar, and the order for each taster. Only for the one who pours.`,
  pourLine: phrase`One person pours and does not taste in this round. Write each code on its cups, then serve each taster in their own order.`,
  pourGate: phrase`This list gives the game away. Open it only if you pour, and away from the tasters’ eyes.`,
  pourOpen: phrase`I pour: show the list`,
  pourHide: phrase`Hide the list`,
  print: phrase`Print`,
  codes: phrase`Which jar goes into which cups`,
  code: phrase`Code`,
  jar: phrase`Jar`,
  level: phrase`Level`,
  cups: phrase`Cups`,
  amount: phrase`Pour`,
  orders: phrase`In which order each taster is served`,
  taster: phrase`Taster`,
  order: phrase`Order, first to last`,
  sitting: (number: number, all: number) => (all === 1 ? phrase`Order, first to last` : phrase`Sitting ${number}`),
  toPour: phrase`The pouring list`,
  toStickers: phrase`Print stickers`,
  toPenSheets: phrase`Print sheets`,

  sheets: phrase`Sheets`,
  sheetsLine: phrase`Each taster fills in their own. A half-filled sheet is kept as it is.`,
  sheetOf: (name: string) => phrase`Sheet of ${name}`,
  ofExpected: (scores: number, expected: number) => phrase`${scores} of ${expected}`,
  complete: phrase`complete`,
  missing: (lacks: readonly Lack[]) => phrase`still to come: ${joined(lacks.map(lackWords))}`,
  missedSamples: (codes: readonly string[]) => phrase`missed ${joined(codes)}`,
  allIn: phrase`Every sheet is complete.`,
  waiting: (names: readonly string[]) => phrase`Waiting for ${joined(names)}.`,

  toImport: phrase`Paste a table of scores`,
  closeTitle: phrase`Close and reveal`,
  closeLine: phrase`Closing shows which code was which jar, and what was tasted becomes findings. After that nothing can be added or changed: nobody can taste blind a second time.`,
  close: phrase`Close and reveal…`,
  closeAsk: phrase`Close this tasting?`,
  closeAskLine: phrase`This can’t be undone. The codes will be seen, and the sheets stay as they are.`,
  closeMissing: (count: number) =>
    count === 1
      ? phrase`One score is still missing; it stays empty.`
      : phrase`${count} scores are still missing; they stay empty.`,
  closeNow: phrase`Close and reveal now`,
  keepOpen: phrase`Keep it open`,
  closedNow: phrase`Closed. Here is what the scores say.`,
  toFindings: phrase`To the findings`,
  revealed: phrase`Which code was which jar`,
  counts: phrase`Counts`,
  counted: phrase`yes`,
  takenOut: (why: string) => phrase`no: taken out, ${why}`,
  remarks: phrase`What the tasters said`,
  remove: phrase`Remove this tasting`,
  removed: phrase`The tasting is in the bin.`,

  sheetLead: phrase`Taste from the first row to the last. Rinse with water in between.`,
  keys: phrase`A digit scores, Enter goes on, arrows move, Backspace takes back. Type 1 then 0 for ten, a comma or point for halves.`,
  scale: (low: number, high: number) => `${shownNumber(low)}–${shownNumber(high)}`,
  kept: (kept: number, all: number) => phrase`${kept} of ${all} kept`,
  keeping: phrase`keeping…`,
  notKept: (count: number) => phrase`${counted(count, 'score')} could not be kept.`,
  leftUnkept: (taster: string, count: number) =>
    count === 1
      ? phrase`${counted(count, 'score')} on the sheet of ${taster} could not be kept. Open the sheet and type it again.`
      : phrase`${counted(count, 'score')} on the sheet of ${taster} could not be kept. Open the sheet and type them again.`,
  again: phrase`Try again`,
  remarkOn: (code: string) => phrase`Remark on ${code}`,
  remark: phrase`Remark`,
  miss: phrase`Missed it`,
  missed: phrase`Missed`,
  notMissed: phrase`I tasted it after all`,
  missedLine: phrase`not tasted, left empty`,
  sheetFull: phrase`Every sample has its scores. Thank you.`,
  stillMissing: (lacks: readonly Lack[]) => phrase`Still empty: ${joined(lacks.map(lackWords))}.`,
  youMissed: (codes: string) => phrase`Missed and left empty: ${codes}.`,
  sheetEnd: phrase`That was the last sample.`,
  rowDone: (code: string) => phrase`Sample ${code} is complete.`,
  steps: (names: readonly string[]) => phrase`The five steps for ${joined(names)}`,
  asked: phrase`Asked`,
  askedRanked: phrase`the order, best first`,
  askedScored: (names: readonly string[]) => joined(names),
  placesGiven: phrase`Which place each taster gave`,
  placesLine: phrase`1 is the best. What the order says as a whole, and how far the tasters agree, stands in Findings.`,
  stepsGiven: (name: string) => phrase`Just about right: ${name}`,
  /** Over jars of several trials a label may stand twice: then the code tells them apart. */
  jarHead: (label: string, level: string, code: string | null) =>
    code === null ? `${label}, ${level}` : `${label}, ${level} (${code})`,
  noAnswer: '–',
  hedonic: phrase`The nine words of liking`,
  closedSheet: phrase`This tasting is closed: the sheet can be read, not changed.`,
  notHere: phrase`This taster is not part of this tasting.`,
  place: (place: number, all: number) => phrase`${place} of ${all}`,
  restBefore: (sitting: number) => phrase`Sitting ${sitting}: take a break before it.`,
} as const;
