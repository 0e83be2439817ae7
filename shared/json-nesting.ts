export interface JsonBounds {
  /** How many brackets may stand open at once. */
  readonly depth: number;
  /** How many characters there must be, on average, for each list or object that begins. */
  readonly charactersEach: number;
}

/** Small texts may be as dense as they like. */
const denseUpTo = 10_000;

/**
 * Looks at a text before it is parsed: whether as JSON it would nest too deep, or hold more lists and objects than its length is worth.
 *
 * Method: one pass over the characters, brackets inside strings passed over. Leaves out whether the text is JSON at all.
 *
 * @param text what should be JSON
 * @param bounds depth 1 or more; charactersEach 0 or more, where 0 lets any density pass
 * @returns `deep` or `dense` for the first bound that is passed, else null
 * @example jsonExcess('[[[]]]', { depth: 2, charactersEach: 0 }) // 'deep'
 */
export function jsonExcess(text: string, { depth, charactersEach }: JsonBounds): 'deep' | 'dense' | null {
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
      open += 1;
      begun += 1;
      if (open > depth) return 'deep';
    } else if (code === 0x5d || code === 0x7d) {
      open -= 1;
    }
  }
  return text.length > denseUpTo && begun * charactersEach > text.length ? 'dense' : null;
}
