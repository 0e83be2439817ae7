import { phrase } from '#core/words/phrase.ts';
import { figureTermWords } from './figure-term-words.ts';
import { jarTermWords } from './jar-term-words.ts';
import { measuredTermWords } from './measured-term-words.ts';
import { panelTermWords } from './panel-term-words.ts';

/** The trade's words, each in one line. */
export const termWords = { ...panelTermWords, ...jarTermWords, ...measuredTermWords, ...figureTermWords } as const;

export type TermName = keyof typeof termWords;

/** Phrases that hold a word of the trade and mean something else: they are read over. */
export const notTerms: string = phrase`sample kitchen|with the sample|Sample, in|temperature of the sample|a code that a telephone|On the scale|scale says|the kitchen scale|a scale of|Start over|Start at|Start a|Start from|reading what|level with|its letters|its letter`;

/** The name of a term, for a list. */
export function termName(name: TermName): string {
  return termWords[name].forms.split('|')[0] ?? name;
}
