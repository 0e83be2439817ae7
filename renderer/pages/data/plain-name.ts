const turning = /[\p{Cc}\u061c\u200e\u200f\u2028\u2029\u202a-\u202e\u2066-\u2069]/gu;

/**
 * A file's name as it is written: what would hide in it or turn its direction is shown by its number.
 *
 * @example plainName('a\u202eb') // 'a⟨U+202E⟩b'
 */
export function plainName(name: string): string {
  return name.replace(
    turning,
    (mark) => `⟨U+${(mark.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}⟩`,
  );
}
