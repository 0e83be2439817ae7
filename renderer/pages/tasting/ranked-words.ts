import { phrase } from '#core/words/phrase.ts';
import { joined } from '#renderer/format/words.ts';

// The sheet of someone who puts the samples in order.
export const rankedWords = {
  lead: phrase`Taste every cup, from the first row to the last, and give each a place: 1 for the best. Go back and taste again as often as you like.`,
  keys: (places: number) =>
    places < 10
      ? phrase`A digit gives the cup its place and goes on to the next cup. Arrows move, Backspace takes a place back. With the mouse, press the place.`
      : phrase`Type the place; Enter goes on where a second digit could follow. Arrows move, Backspace takes a place back. With the mouse, press the place.`,
  double: (place: number, others: string) =>
    phrase`Place ${place} stands at ${others} too. Give each cup a place of its own.`,
  free: (places: readonly number[]) =>
    places.length === 0 ? phrase`No place yet.` : phrase`No place yet. Still free: ${joined(places.map(String))}.`,
  ties: phrase`Cups may share a place`,
  tiesHint: phrase`Only if you truly can’t tell them apart: then give both the same place.`,
  soFar: phrase`Your order so far`,
  nothingYet: phrase`No cup has a place yet.`,
  best: phrase`best`,
  cups: (names: readonly string[]) => joined(names),
  doubleAlone: phrase`Two cups have the same place. Give each its own before you go on.`,
  full: phrase`Every cup has its place. Thank you.`,
  stillMissing: (codes: readonly string[]) => phrase`Still without a place: ${joined(codes)}.`,
} as const;
