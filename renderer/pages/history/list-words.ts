import { factorWords } from '#core/trial/factor.ts';
import type { NeedKind } from '#core/trial/need.ts';
import { phrase } from '#core/words/phrase.ts';
import { coverWords, ingredientKindWords, stateWords, vesselWords } from '#renderer/format/words.ts';
import { pourWords } from '#renderer/parts/bottling/words.ts';
import { sightingWords } from '#renderer/parts/jar-work/words.ts';
import type { cultureActs } from '#shared/contract/bases.ts';

const cultureWords: Readonly<Record<(typeof cultureActs)[number], string>> = {
  weighed: phrase`weighed`,
  refreshed: phrase`refreshed`,
  split: phrase`split`,
  'revival-feed': phrase`fed, to wake it`,
  revived: phrase`awake again`,
};

const needWords: Readonly<Record<NeedKind, string>> = {
  start: phrase`starting`,
  look: phrase`looking`,
  stir: phrase`stirring`,
  pull: phrase`pulling`,
  taste: phrase`tasting`,
  strain: phrase`straining`,
  feed: phrase`feeding`,
};

/** Names from closed lists, in the trade's words, by the column that holds them. */
const lists: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  factor: factorWords,
  calendar: {
    'staggered-start': phrase`started one after the other`,
    'staggered-pull': phrase`pulled one after the other`,
  },
  vessel_kind: vesselWords,
  closure: vesselWords,
  kind: {
    ...vesselWords,
    ...ingredientKindWords,
    scale: phrase`a scale`,
    'just-about-right': phrase`too little or too much`,
    place: phrase`a place in an order`,
  },
  cover: coverWords,
  state: stateWords,
  what: { ...sightingWords, ...cultureWords, taster: phrase`a taster`, bin: phrase`the bin` },
  need: needWords,
  pour: pourWords,
  goal: { more: phrase`the more, the better`, less: phrase`the less, the better`, target: phrase`just so much` },
  method: {
    triangle: phrase`Odd one out`,
    'duo-trio': phrase`Find the match`,
    paired: phrase`Which is more? (one is expected)`,
    'paired-two-sided': phrase`Which is more?`,
  },
  basis: { panel: phrase`a panel`, sips: phrase`the maker’s own sips`, none: phrase`no tasting` },
  measures: { metric: phrase`metric`, us: phrase`US` },
};

/** What a value of a closed list is called; any other text is said as it was written. */
export function listWords(column: string, text: string): string {
  const list = lists[column];
  return list !== undefined && Object.hasOwn(list, text) ? (list[text] ?? text) : text;
}
