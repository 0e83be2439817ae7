/**
 * The first part of a text, never half a character.
 *
 * @example firstPart('ab😀', 3) // 'ab'
 */
export function firstPart(text: string, most: number): string {
  return text.slice(0, most).replace(/[\ud800-\udbff]$/, '');
}
