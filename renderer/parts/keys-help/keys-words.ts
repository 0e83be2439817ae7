import { phrase } from '#core/words/phrase.ts';

export interface KeyLine {
  readonly keys: readonly string[];
  readonly does: string;
}

export const keysWords = {
  open: phrase`Keys`,
  title: phrase`Keys and words`,
  keys: phrase`Keys`,
  words: phrase`Words`,
} as const;

/** The keys that do something, and where. `Mod` is Ctrl, or Cmd on a Mac. */
export const keyLines: readonly KeyLine[] = [
  { keys: [phrase`Mod`, phrase`K`], does: phrase`find a jar, trial, taster, recipe, or something to do` },
  { keys: [phrase`Mod`, phrase`Z`], does: phrase`undo the last step (in a text field: the last typing)` },
  { keys: [phrase`Mod`, phrase`Shift`, phrase`Z`], does: phrase`do it again` },
  { keys: ['?'], does: phrase`show this page of keys` },
  {
    keys: [phrase`Enter`, phrase`Arrows`],
    does: phrase`on a tasting’s sheet: go on to the next cell, or to a neighbour`,
  },
  { keys: ['0 … 9'], does: phrase`on a tasting’s sheet: score the cell` },
  { keys: ['←', '→'], does: phrase`on a dotted word: go to the next one of this page` },
  { keys: [phrase`Escape`], does: phrase`close what is open` },
];
