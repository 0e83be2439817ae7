/** More members than any object of the contract has, by far: a panel's levels by name are the most. */
const mostMembers = 5000;
const deepest = 8;

/**
 * Where an input holds an object with more than 5,000 members; null when nowhere.
 *
 * Looked at before the contract checks names one by one, which takes seconds for a million of them. Leaves out what lies deeper than
 * eight levels, where the contract has only drafts, which are capped as a whole.
 */
export function crowdedMember(input: unknown, depth = 0): (string | number)[] | null {
  if (typeof input !== 'object' || input === null || depth > deepest) return null;
  if (Array.isArray(input)) {
    for (let at = 0; at < input.length; at += 1) {
      const inner = crowdedMember(input[at], depth + 1);
      if (inner !== null) return [at, ...inner];
    }
    return null;
  }
  let count = 0;
  for (const key in input) {
    count += 1;
    if (count > mostMembers) return [];
    const inner = crowdedMember((input as Record<string, unknown>)[key], depth + 1);
    if (inner !== null) return [key.slice(0, 200), ...inner];
  }
  return null;
}
