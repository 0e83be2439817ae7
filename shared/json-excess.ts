export interface JsonBounds {
  /** How many brackets may stand open at once. */
  readonly depth: number;
  /** How many members one object may have. */
  readonly members: number;
  /** How many characters there must be, on average, for each list or object that begins. */
  readonly charactersEach: number;
}

/** Small texts may be as dense as they like. */
const denseUpTo = 10_000;

/**
 * Looks at a text before it is parsed: whether as JSON it would nest too deep, crowd one object, or hold more lists and objects than
 * its length is worth. Parsing an object of a million members takes many seconds; this takes none.
 *
 * Method: one pass over the characters; brackets and commas inside strings are passed over. Leaves out whether the text is JSON at all.
 *
 * @param text what should be JSON
 * @param bounds depth and members 1 or more; charactersEach 0 or more, where 0 lets any density pass
 * @returns the first bound that is passed: `deep`, `crowded` or `dense`; else null
 * @example jsonExcess('[[[]]]', { depth: 2, members: 10, charactersEach: 0 }) // 'deep'
 */
export function jsonExcess(
  text: string,
  { depth, members, charactersEach }: JsonBounds,
): 'deep' | 'crowded' | 'dense' | null {
  // Of each bracket that stands open: commas so far, or minus infinity for a list, which may have any number.
  const commas: number[] = [];
  let open = 0;
  let begun = 0;
  let inString = false;
  for (let at = 0; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    if (inString) {
      // A backslash takes the next character with it.
      if (code === 0x5c) at += 1;
      else if (code === 0x22) inString = false;
    } else if (code === 0x22) {
      inString = true;
    } else if (code === 0x5b || code === 0x7b) {
      commas[open] = code === 0x7b ? 0 : Number.NEGATIVE_INFINITY;
      open += 1;
      begun += 1;
      if (open > depth) return 'deep';
    } else if (code === 0x5d || code === 0x7d) {
      open = Math.max(0, open - 1);
    } else if (code === 0x2c && open > 0) {
      const count = (commas[open - 1] ?? 0) + 1;
      if (count >= members) return 'crowded';
      commas[open - 1] = count;
    }
  }
  return text.length > denseUpTo && begun * charactersEach > text.length ? 'dense' : null;
}
