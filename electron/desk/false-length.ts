type Path = readonly (string | number)[];

const deepest = 8;

/**
 * The first place of an input with an object that calls something its length which is no number; else null.
 *
 * The contract's checks of texts and lists look at the length of whatever came, and trip over one that cannot be compared
 * (`{ "length": { "toString": 1 } }`): where they did, this says which member it was.
 */
export function falseLength(input: unknown, depth = 0): Path | null {
  if (typeof input !== 'object' || input === null || depth > deepest) return null;
  if (
    !Array.isArray(input) &&
    Object.hasOwn(input, 'length') &&
    typeof (input as { length: unknown }).length === 'object'
  )
    return [];
  for (const [key, inner] of Object.entries(input)) {
    const found = falseLength(inner, depth + 1);
    if (found !== null) return [Array.isArray(input) ? Number(key) : key, ...found];
  }
  return null;
}
