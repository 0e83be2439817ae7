import type { ReactNode } from 'react';
import { phrase } from '#core/words/phrase.ts';

// Only what is drawn is glued, in the parts through which words come to the page: files, fields and what is stored keep plain spaces.

const symbols =
  '%(?: vol)?|°\\S*|[kmµ]?g(?:\\/k?[gL])?|m?L|meq\\/L|bar|psi|[cm]m|oz(?:\\/gal)?|lb|tsp|tbsp|cups?|pt|qt|gal|fl oz|h|min';

/** Words that are as much a measure as a symbol is; a translation writes its own forms. */
const measureWords = phrase`point|points|hour|hours|day|days|week|weeks|month|months`;

const held = '\u00a0';

let pattern: RegExp | null = null;

function unitAfterFigure(): RegExp {
  const words = measureWords.split('|').map((word) => word.trim().replace(/[\\^$.*+?()[\]{}|/]/g, '\\$&'));
  const units = [symbols, ...words.filter((word) => word !== '')].join('|');
  // A kitchen fraction stays with its whole: 1 1/8 qt.
  return new RegExp(`(\\d) ((?:\\d+\\/\\d+ )?(?:${units}))(?![\\p{L}\\d])`, 'gu');
}

/**
 * Keeps a figure and its unit on one line.
 *
 * @example glued('0.9 points above (95 % interval 0.1 to 1.8)') // '0.9\u00a0points above (95\u00a0% interval 0.1 to 1.8)'
 */
export function glued(sentence: string): string {
  pattern ??= unitAfterFigure();
  return sentence.replace(pattern, (_, digit: string, unit: string) => `${digit}${held}${unit.replaceAll(' ', held)}`);
}

/** The same of what may be drawn already, which stays as it is. */
export function gluedText(content: ReactNode): ReactNode {
  return typeof content === 'string' ? glued(content) : content;
}
