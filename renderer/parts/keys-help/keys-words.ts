export interface KeyLine {
  readonly keys: readonly string[];
  readonly does: string;
}

export const keysWords = {
  open: 'Keys',
  title: 'Keys and words',
  keys: 'Keys',
  words: 'Words',
} as const;

/** The keys that do something, and where. `Mod` is Ctrl, or Cmd on a Mac. */
export const keyLines: readonly KeyLine[] = [
  { keys: ['Mod', 'K'], does: 'find a jar, trial, taster, recipe, or something to do' },
  { keys: ['Mod', 'Z'], does: 'undo the last step (in a text field: the last typing)' },
  { keys: ['Mod', 'Shift', 'Z'], does: 'do it again' },
  { keys: ['?'], does: 'show this page of keys' },
  { keys: ['Enter', 'Arrows'], does: 'on a tasting’s sheet: go on to the next cell, or to a neighbour' },
  { keys: ['0 … 9'], does: 'on a tasting’s sheet: score the cell' },
  { keys: ['Escape'], does: 'close what is open' },
];
