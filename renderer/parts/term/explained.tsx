import type { ReactNode } from 'react';
import { Term } from './term.tsx';
import { type TermName, termWords } from './term-words.ts';

/** The longest words first, so that "blind code" is found before a shorter one within it. */
const names = (Object.keys(termWords) as TermName[]).sort((one, other) => other.length - one.length);
const pattern = new RegExp(`\\b(${names.join('|')})(s?)\\b`, 'i');

/** A sentence whose first word of the trade says what it means, on hover and on focus. */
export function Explained({ words }: { readonly words: string }): ReactNode {
  const found = pattern.exec(words);
  const name = names.find((each) => each === found?.[1]?.toLowerCase());
  if (found === null || name === undefined) return words;
  return (
    <>
      {words.slice(0, found.index)}
      <Term of={name}>{found[0]}</Term>
      {words.slice(found.index + found[0].length)}
    </>
  );
}
