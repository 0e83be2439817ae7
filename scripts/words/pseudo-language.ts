import type { Catalogue } from './catalogue.ts';

const accented: Readonly<Record<string, string>> = {
  a: 'á',
  c: 'ç',
  e: 'é',
  i: 'í',
  n: 'ñ',
  o: 'ö',
  s: 'š',
  u: 'ü',
  y: 'ý',
  z: 'ž',
  A: 'Á',
  C: 'Ç',
  E: 'É',
  I: 'Í',
  N: 'Ñ',
  O: 'Ö',
  S: 'Š',
  U: 'Ü',
};

/** Words as they would look in a language that nobody speaks: with accents, about a third longer, and in brackets. */
function pseudo(words: string): string {
  if (!/\p{L}/u.test(words)) return words;
  const [, before = '', inner = '', after = ''] = /^(\s*)([\s\S]*?)(\s*)$/.exec(words) ?? [];
  const said = [...inner].map((letter) => accented[letter] ?? letter).join('');
  // The forms of a word are looked for in sentences, and stand there without brackets.
  if (words.includes('|')) return said;
  // In pieces as long as words: one long one could not be broken into lines.
  const more = '~'.repeat(Math.ceil(inner.length * 0.3)).replace(/~{6}(?=~)/g, '~~~~~~ ');
  return `${before}⟦${said}${more}⟧${after}`;
}

/**
 * A translation of every phrase, for looking whether anything on a screen is said beside the catalogue, and whether longer words fit.
 *
 * The places of a phrase stay outside the brackets, so that words put into it untranslated are seen too.
 *
 * @example pseudoLanguage({ 'Look at {0}': { in: [] } }) // { 'Look at {0}': '⟦Löök át~~~⟧ {0}' }
 */
export function pseudoLanguage(catalogue: Catalogue): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.keys(catalogue).map((key) => [
      key,
      key
        .split(/(\{\d+\})/)
        .map((part) => (/^\{\d+\}$/.test(part) ? part : pseudo(part)))
        .join(''),
    ]),
  );
}
