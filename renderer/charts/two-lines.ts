function cut(text: string, most: number): string {
  return text.length > most ? `${text.slice(0, most - 1).trimEnd()}…` : text;
}

/**
 * A name on at most two lines of so many letters, broken between words; what still is too long is cut.
 *
 * @example twoLines('Apricot and lemon', 11) // ['Apricot and', 'lemon']
 */
export function twoLines(name: string, most: number): string[] {
  if (name.length <= most) return [name];
  const words = name.split(/\s+/);
  let first = words.shift() ?? '';
  while (words[0] !== undefined && first.length + 1 + words[0].length <= most) first += ` ${words.shift() ?? ''}`;
  return [first, words.join(' ')].filter((line) => line !== '').map((line) => cut(line, most));
}
