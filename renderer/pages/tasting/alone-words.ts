import { phrase } from '#core/words/phrase.ts';
import { joined } from '#renderer/format/words.ts';

// The guided way for one person who pours and tastes.

export const aloneWords = {
  title: phrase`I taste alone`,
  lead: phrase`You pour, lose track, taste, and only then look which cup was which.`,
  steps: [phrase`Pour`, phrase`Shuffle`, phrase`Taste`, phrase`Turn over`, phrase`Reveal`],
  steps_label: phrase`Steps of tasting alone`,
  onward: phrase`Go on`,
  back: phrase`Back`,
  pourTitle: phrase`Pour`,
  pourLines: [
    phrase`Take as many cups as there are samples, all alike; dark ones, or a dim light, where the jars differ in colour.`,
    phrase`Write each code on a sticker and put it under the cup’s foot, where you can’t see it. Then pour the jar that belongs to it.`,
  ],
  showCodes: phrase`Show which code is which jar`,
  hideCodes: phrase`Hide the codes again`,
  shuffleTitle: phrase`Shuffle`,
  shuffleLines: [
    phrase`Put all cups on a tray. Close your eyes, and slide them past each other until you have lost track; then turn the tray a few times.`,
    phrase`Set the cups in a row as they come to hand, still without looking under them.`,
    phrase`If someone else is near, let them set the row: that is better still.`,
  ],
  tasteTitle: phrase`Taste`,
  tasteLine: (places: readonly number[]) =>
    phrase`Count the cups from the left. Taste them in this order: ${joined(places.map(String))}. Rinse with water in between, and don’t turn a cup over yet.`,
  rankLine: phrase`Then give each cup a place, 1 for the best. Go back to a cup as often as you like; two that you can’t tell apart, taste once more and decide.`,
  cup: (place: number) => phrase`Cup ${place}`,
  fromLeft: phrase`from the left`,
  sheet: phrase`Your sheet, cup by cup`,
  kept: phrase`What you typed is kept until the cups are turned over.`,
  notKept: (why: string) => phrase`What you typed is not kept yet: ${why}`,
  turnTitle: phrase`Turn over`,
  turnLine: phrase`Now look under each cup and write its code here. Once a code is written, what you scored can’t be changed here.`,
  codeUnder: (place: number) => phrase`Code under cup ${place}`,
  noSuchCode: (code: string) => phrase`No sample of this tasting has the code ${code}.`,
  codeTwice: (code: string) => phrase`${code} stands at two cups.`,
  keepScores: phrase`Put the scores under their codes`,
  scoresKept: (count: number) => (count === 1 ? phrase`One score is kept.` : phrase`${count} scores are kept.`),
  nothingScored: phrase`No cup has a score yet.`,
  revealTitle: phrase`Reveal`,
  revealLine: phrase`The scores stand under their codes. Closing shows which jar each was.`,
  canTellTitle: phrase`What one taster can and can’t tell`,
  canTell: [
    phrase`It can tell which jar you liked best today, without knowing which it was. That is worth more than tasting with the labels in sight.`,
    phrase`It can’t tell how sure that is: with one taster there is no second opinion to measure doubt by. Findings will show your scores and say so.`,
  ],
  twice: phrase`To know how steady you are, taste the same jars again on another day as a tasting of its own.`,
  onlyOnce: phrase`The guided way is for one taster and samples served once. Use the sheet instead.`,
} as const;
