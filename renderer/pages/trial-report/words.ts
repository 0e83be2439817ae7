import { counted } from '#renderer/format/words.ts';

export const words = {
  title: 'The trial on one page',
  lead: 'What was asked, what was held, what the panel found and how sure it is: for the folder, or for somebody who was not there.',
  back: 'The findings',
  reading: 'Reading what the panel said…',
  print: 'Print a report',
  printHint: 'One page. In the print window choose the same paper and no margins. For a PDF choose “Save as PDF”.',
  tooLong:
    'There is more here than one page can show readably: the end is cut off on paper. “Save as text” on Findings holds all of it.',
  preview: 'As it will be printed',
  page: 'The report',
  nothing: 'Nothing to report yet',
  nothingLine: 'A report appears once a tasting of this trial is closed and its codes are revealed.',
  toTaste: 'Go to the tasting',
  ofTrial: (factor: string, jars: number, tastings: number, tasters: number, scores: number) =>
    [
      factor,
      counted(jars, 'jar'),
      `${counted(tastings, 'closed tasting')}`,
      ...(tasters === 0 ? [] : [counted(tasters, 'taster')]),
      ...(scores === 0 ? [] : [counted(scores, 'score')]),
    ].join(' · '),
  alsoShown: 'What did show',
  aside: (names: string) => `Not counted here: ${names}.`,
  held: 'Held equal',
  jars: 'The jars',
  jar: (label: string, level: string, isControl: boolean) => `${label} ${level}${isControl ? ' (control)' : ''}`,
  stood: (from: string, to: string) => `${from} to ${to}`,
  chartNote:
    'Faint dots: single scores. Diamonds: means with 95 % intervals. Curve and band: the line through the levels and how far it may lie off.',
  means: 'Means of each level; levels that share a letter were not told apart',
  attribute: 'Attribute',
  notDrawn: (names: string) => `Not drawn for want of room: ${names}; their means stand in the table.`,
  winner: (level: string, mean: string) => `Best liked: ${level}, ${mean}`,
  noWinner: 'No level is named as best: the panel is not sure enough of any.',
  formula: (parts: string) => `Each jar: ${parts}.`,
  nothingAdded: 'nothing added',
  cautions: 'The usual cautions',
  cautionsOf: (level: string) =>
    `Of “${level}”, as it was made. They defer to your local rules and to licensed practice.`,
  cautionsGeneral:
    'A live drink makes gas and may hold alcohol: mind closed glass, tell people who avoid alcohol, discard what grows mould, measure the pH, and ask your local authority before selling.',
} as const;
