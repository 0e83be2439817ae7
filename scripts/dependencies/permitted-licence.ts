/** What may go into the program: permission with nothing asked but the notice. SPDX identifiers. */
const forProgram = [
  '0BSD',
  'Apache-2.0',
  'BlueOak-1.0.0',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'BSL-1.0',
  'CC0-1.0',
  'ISC',
  'MIT',
  'Unlicense',
  'WTFPL',
  // For fonts, which go along whole and under their own name.
  'OFL-1.1',
];
/** A tool that stays here may ask for its own changes to be shared: we make none. */
const forTools = [...forProgram, 'MPL-2.0', 'Python-2.0'];

/**
 * Whether an SPDX licence expression lets a package be used.
 *
 * Method: identifiers joined by AND must all be permitted, of those joined by OR one must; AND binds more closely, brackets first
 * (SPDX 2.3, annex D). Leaves out WITH and "or later" forms: they count as not permitted, so that a person looks.
 *
 * @param expression such as `(MIT OR CC0-1.0)`; null when none is named
 * @example isPermitted('MIT AND GPL-3.0-only', 'tool') // false
 */
export function isPermitted(expression: string | null, use: 'program' | 'tool'): boolean {
  if (expression === null) return false;
  const words = expression.match(/[()]|[^\s()]+/g) ?? [];
  const permitted = use === 'program' ? forProgram : forTools;
  let at = 0;
  function one(): boolean {
    const word = words[at];
    at += 1;
    if (word !== '(') return word !== undefined && permitted.includes(word);
    const inner = either();
    if (words[at] !== ')') at = words.length + 1;
    at += 1;
    return inner;
  }
  function all(): boolean {
    let result = one();
    while (words[at] === 'AND') {
      at += 1;
      const next = one();
      result = result && next;
    }
    return result;
  }
  function either(): boolean {
    let result = all();
    while (words[at] === 'OR') {
      at += 1;
      const next = all();
      result = result || next;
    }
    return result;
  }
  const result = either();
  // Words left over mean that it was no expression of this kind.
  return result && at === words.length;
}
