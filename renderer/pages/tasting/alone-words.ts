import { joined } from '#renderer/format/words.ts';

// The guided way for one person who pours and tastes.

export const aloneWords = {
  title: 'I taste alone',
  lead: 'You pour, lose track, taste, and only then look which cup was which.',
  steps: ['Pour', 'Shuffle', 'Taste', 'Turn over', 'Reveal'],
  steps_label: 'Steps of tasting alone',
  onward: 'Go on',
  back: 'Back',
  pourTitle: 'Pour',
  pourLines: [
    'Take as many cups as there are samples, all alike; dark ones, or a dim light, where the jars differ in colour.',
    'Write each code on a sticker and put it under the cup’s foot, where you can’t see it. Then pour the jar that belongs to it.',
  ],
  showCodes: 'Show which code is which jar',
  hideCodes: 'Hide the codes again',
  shuffleTitle: 'Shuffle',
  shuffleLines: [
    'Put all cups on a tray. Close your eyes, and slide them past each other until you have lost track; then turn the tray a few times.',
    'Set the cups in a row as they come to hand, still without looking under them.',
    'If someone else is near, let them set the row: that is better still.',
  ],
  tasteTitle: 'Taste',
  tasteLine: (places: readonly number[]) =>
    `Count the cups from the left. Taste them in this order: ${joined(places.map(String))}. Rinse with water in between, and don’t turn a cup over yet.`,
  rankLine:
    'Then give each cup a place, 1 for the best. Go back to a cup as often as you like; two that you can’t tell apart, taste once more and decide.',
  cup: (place: number) => `Cup ${place}`,
  fromLeft: 'from the left',
  sheet: 'Your sheet, cup by cup',
  kept: 'What you typed is kept until the cups are turned over.',
  notKept: (why: string) => `What you typed is not kept yet: ${why}`,
  turnTitle: 'Turn over',
  turnLine:
    'Now look under each cup and write its code here. Once a code is written, what you scored can’t be changed here.',
  codeUnder: (place: number) => `Code under cup ${place}`,
  noSuchCode: (code: string) => `No sample of this tasting has the code ${code}.`,
  codeTwice: (code: string) => `${code} stands at two cups.`,
  keepScores: 'Put the scores under their codes',
  scoresKept: (count: number) => (count === 1 ? 'One score is kept.' : `${count} scores are kept.`),
  nothingScored: 'No cup has a score yet.',
  revealTitle: 'Reveal',
  revealLine: 'The scores stand under their codes. Closing shows which jar each was.',
  canTellTitle: 'What one taster can and can’t tell',
  canTell: [
    'It can tell which jar you liked best today, without knowing which it was. That is worth more than tasting with the labels in sight.',
    'It can’t tell how sure that is: with one taster there is no second opinion to measure doubt by. Findings will show your scores and say so.',
  ],
  twice: 'To know how steady you are, taste the same jars again on another day as a tasting of its own.',
  onlyOnce: 'The guided way is for one taster and samples served once. Use the sheet instead.',
} as const;
