import { laidWords } from '#core/words/laid-words.ts';

/**
 * A stored moment as a sentence of the desk says it, by this machine's clock, in the language of the words around it.
 *
 * @param moment ISO 8601
 * @example momentWords('2026-05-12T09:00:00Z') // '12 May 2026, 09:00' in Reykjavík
 */
export function momentWords(moment: string): string {
  const form = {
    day: 'numeric',
    month: 'short',
    year: 'numeric',
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
  } as const;
  return new Intl.DateTimeFormat(laidWords()?.language ?? 'en-GB', form).format(new Date(moment));
}
