/** What no request may hold, and where. */
export interface OddMember {
  readonly kind: 'crowded' | 'no-text';
  readonly path: readonly (string | number)[];
}

/** More members than any object of the contract has, by far: a panel's levels by name are the most. */
const mostMembers = 5000;
const deepest = 8;

function within(found: OddMember, step: string | number): OddMember {
  return { ...found, path: [step, ...found.path] };
}

/**
 * The first place of an input with an object of more than 5,000 members, or a text that is none (half of a surrogate pair); else null.
 *
 * Looked at before the contract checks names one by one, which takes seconds for a million of them; and half a character would be
 * written as another than the change log says. Leaves out what lies deeper than eight levels, where the contract has only drafts,
 * which are capped as a whole and never logged.
 */
export function oddMember(input: unknown, depth = 0): OddMember | null {
  if (typeof input === 'string') return input.isWellFormed() ? null : { kind: 'no-text', path: [] };
  if (typeof input !== 'object' || input === null || depth > deepest) return null;
  if (Array.isArray(input)) {
    for (let at = 0; at < input.length; at += 1) {
      const inner = oddMember(input[at], depth + 1);
      if (inner !== null) return within(inner, at);
    }
    return null;
  }
  let count = 0;
  for (const key in input) {
    count += 1;
    if (count > mostMembers) return { kind: 'crowded', path: [] };
    const inner = oddMember((input as Record<string, unknown>)[key], depth + 1) ?? oddMember(key, depth + 1);
    if (inner !== null) return within(inner, key.toWellFormed().slice(0, 200));
  }
  return null;
}
