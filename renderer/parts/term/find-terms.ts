import { notTerms, type TermName, termWords } from './term-words.ts';

/** A piece of a sentence: plain words, or a word of the trade. */
export type SentencePart = string | { readonly of: TermName; readonly said: string };

interface Form {
  readonly said: string;
  /** Null for what only looks like a term. */
  readonly name: TermName | null;
}

/** Scripts that write words without a space between. */
const unspaced =
  /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Thai}\p{Script=Lao}\p{Script=Khmer}\p{Script=Myanmar}]/u;

/** All forms that stand in one phrase of the catalogue. */
export function formsIn(forms: string): string[] {
  return forms
    .split('|')
    .map((form) => form.trim())
    .filter((form) => form !== '');
}

function anyOf(forms: readonly string[]): string {
  // An empty list must find nothing.
  if (forms.length === 0) return '(?!)';
  return forms.map((form) => form.replace(/[\\^$.*+?()[\]{}|/]/g, '\\$&').replace(/\s+/g, '\\s+')).join('|');
}

/** One pattern for all forms: what stands before and after a word is looked at once a place, not once a form. */
function patternOf(forms: readonly string[]): RegExp {
  const joined = forms.filter((form) => unspaced.test(form));
  const spaced = forms.filter((form) => !unspaced.test(form));
  const words = anyOf(spaced.filter((form) => form.length > 1));
  // A single letter is as easily somebody's initial: it counts alone, or before a colon.
  const letters = anyOf(spaced.filter((form) => form.length === 1));
  return new RegExp(`(?<![\\p{L}\\p{N}])(?:${words})(?![\\p{L}\\p{N}])|^(?:${letters})(?=$|:)|${anyOf(joined)}`, 'giu');
}

const plainOf = (said: string) => said.replace(/\s+/g, ' ');

function finder() {
  const forms: Form[] = [
    ...formsIn(notTerms).map((said) => ({ said, name: null })),
    ...Object.entries(termWords).flatMap(([name, words]) =>
      formsIn(words.forms).map((said) => ({ said, name: name as TermName })),
    ),
  ].sort((one, other) => other.said.length - one.said.length);
  const bySaid = new Map<string, Form[]>();
  for (const form of forms) {
    const key = form.said.toLowerCase();
    bySaid.set(key, [...(bySaid.get(key) ?? []), form]);
  }
  const pattern = patternOf(forms.map(({ said }) => said));
  return {
    pattern,
    formOf(said: string): Form | undefined {
      const plain = plainOf(said);
      return bySaid
        .get(plain.toLowerCase())
        ?.find((form) => form.said === plain || form.said === form.said.toLowerCase());
    },
  };
}

// Said in the window's language, which is laid in before any page is drawn.
let found: ReturnType<typeof finder> | null = null;

// While somebody types, the same labels are drawn again at every key.
const known = new Map<string, readonly SentencePart[]>();
const mostKnown = 1000;

/** Takes a sentence apart at its words of the trade; each word is told once, where it stands first. */
export function partsWithTerms(words: string): readonly SentencePart[] {
  const before = known.get(words);
  if (before !== undefined) return before;
  if (known.size >= mostKnown) known.clear();
  const parts = takenApart(words);
  known.set(words, parts);
  return parts;
}

function takenApart(words: string): SentencePart[] {
  found ??= finder();
  const { pattern, formOf } = found;
  const parts: SentencePart[] = [];
  const told = new Set<TermName>();
  let from = 0;
  pattern.lastIndex = 0;
  for (let match = pattern.exec(words); match !== null; match = pattern.exec(words)) {
    const [said] = match;
    const form = formOf(said);
    if (form === undefined) {
      pattern.lastIndex = match.index + 1;
      continue;
    }
    if (form.name === null || told.has(form.name)) continue;
    told.add(form.name);
    if (match.index > from) parts.push(words.slice(from, match.index));
    parts.push({ of: form.name, said });
    from = match.index + said.length;
  }
  if (from < words.length) parts.push(words.slice(from));
  return parts;
}

/** The words of the trade that a sentence says, in its order. */
export function termsIn(words: string): TermName[] {
  return partsWithTerms(words).flatMap((part) => (typeof part === 'string' ? [] : [part.of]));
}
