import { phrase } from '#core/words/phrase.ts';
import { counted } from '#renderer/format/counted.ts';

export const words = {
  title: phrase`The trial on one page`,
  lead: phrase`What was asked, what was held, what the panel found and how sure it is: for the folder, or for somebody who was not there.`,
  back: phrase`The findings`,
  reading: phrase`Reading what the panel said…`,
  print: phrase`Print a report`,
  printHint: phrase`One page. In the print window choose the same paper and no margins. For a PDF choose “Save as PDF”.`,
  tooLong: phrase`There is more here than one page can show readably: the end is cut off on paper. “Save as text” on Findings holds all of it.`,
  preview: phrase`As it will be printed`,
  page: phrase`The report`,
  nothing: phrase`Nothing to report yet`,
  nothingLine: phrase`A report appears once a tasting of this trial is closed and its codes are revealed.`,
  toTaste: phrase`Go to the tasting`,
  ofTrial: (factor: string, jars: number, tastings: number, tasters: number, scores: number) =>
    [
      factor,
      counted(jars, 'jar'),
      `${counted(tastings, 'closed tasting')}`,
      ...(tasters === 0 ? [] : [counted(tasters, 'taster')]),
      ...(scores === 0 ? [] : [counted(scores, 'score')]),
    ].join(' · '),
  alsoShown: phrase`What did show`,
  aside: (names: string) => phrase`Not counted here: ${names}.`,
  held: phrase`Held equal`,
  jars: phrase`The jars`,
  jar: (label: string, level: string, isControl: boolean) => `${label} ${level}${isControl ? phrase` (control)` : ''}`,
  stood: (from: string, to: string) => phrase`${from} to ${to}`,
  chartNote: phrase`Faint dots: single scores. Diamonds: means with 95 % intervals. Curve and band: the line through the levels and how far it may lie off.`,
  means: phrase`Means of each level; levels that share a letter were not told apart`,
  attribute: phrase`Attribute`,
  notDrawn: (names: string) => phrase`Not drawn for want of room: ${names}; their means stand in the table.`,
  winner: (level: string, mean: string) => phrase`Best liked: ${level}, ${mean}`,
  noWinner: phrase`No level is named as best: the panel is not sure enough of any.`,
  formula: (parts: string) => phrase`Each jar: ${parts}.`,
  nothingAdded: phrase`nothing added`,
  cautions: phrase`The usual cautions`,
  cautionsOf: (level: string) =>
    phrase`Of “${level}”, as it was made. They defer to your local rules and to licensed practice.`,
  cautionsGeneral: phrase`A live drink makes gas and may hold alcohol: mind closed glass, tell people who avoid alcohol, discard what grows mould, measure the pH, and ask your local authority before selling.`,
} as const;
