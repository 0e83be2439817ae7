import { phrase } from '#core/words/phrase.ts';
import { justAboutRightAnswer, justAboutRightWords } from '#shared/just-about-right-words.ts';
import { scaleProblem } from './scale-problem.ts';
import type { Attribute } from './tasting-names.ts';

const numeral = /^[+-]?\d+(?:[.,]\d+)?$/;

/** A number as spreadsheets write it, with a decimal comma or a true minus sign too; null for anything else. */
export function numberIn(written: string): number | null {
  const plain = written.replace(/^[−–]/, '-');
  return numeral.test(plain) ? Number(plain.replace(',', '.')) : null;
}

export interface ScoreProblem {
  readonly code: string;
  readonly message: string;
}

export interface ReadScore {
  readonly score: number;
  /** A place written as “2=”: shared on purpose. */
  readonly isShared: boolean;
}

const words = justAboutRightWords.map((word) => `“${word}”`).join(', ');
/** How places that are shared on purpose are written, as league tables do: 2= or =2. */
const shared = /^=?\s*(\d+)\s*=?$/;

/** Reads a cell of a table for its attribute: a number on its scale, one of the five words, or a place. */
export function readScore(written: string, attribute: Attribute): ReadScore | ScoreProblem {
  const { kind, name } = attribute;
  const place = kind === 'place' ? shared.exec(written)?.[1] : undefined;
  const word = kind === 'just-about-right' ? justAboutRightAnswer(written) : null;
  const score = place === undefined ? (word ?? numberIn(written)) : Number(place);
  if (score === null) {
    const said = phrase`“${written.slice(0, 60)}” is not a number`;
    if (kind === 'just-about-right') {
      return { code: 'not-a-step', message: phrase`${said}, and not one of the five words: ${words}.` };
    }
    return { code: 'not-a-number', message: `${said}.` };
  }
  const problem = scaleProblem(attribute, score);
  if (problem === null) return { score, isShared: place !== undefined && written.includes('=') };
  const countsFromOne = kind === 'just-about-right' && Number.isInteger(score) && score >= 3 && score <= 5;
  return countsFromOne
    ? {
        ...problem,
        message: phrase`${problem.message} Where ${name} is counted from 1 to 5, take 3 off every answer first.`,
      }
    : problem;
}
