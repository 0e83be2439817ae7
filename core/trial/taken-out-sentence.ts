import { phrase } from '#core/words/phrase.ts';

/** A jar that was discarded while its tasting was still open. */
export interface JarTakenOut {
  /** The tasting's name. */
  readonly name: string;
  readonly jar: string;
  readonly level: string;
  readonly why: string;
  /** How many scores of it were kept. */
  readonly scores: number;
}

/**
 * Says that a jar was taken out of a tasting before it was revealed, why, and what became of its scores.
 *
 * @example takenOutSentence({ name: 'Sunday', jar: 'B', level: '2 days', why: 'mould', scores: 3 })
 * // 'Jar B (2 days) was taken out of “Sunday” before it was revealed: mould. Its 3 scores are kept and not counted.'
 */
export function takenOutSentence({ name, jar, level, why, scores }: JarTakenOut): string {
  const out = phrase`Jar ${jar} (${level}) was taken out of “${name}” before it was revealed: ${why}.`;
  if (scores === 0) return `${out} ${phrase`Nobody had scored it.`}`;
  return scores === 1
    ? `${out} ${phrase`Its one score is kept and not counted.`}`
    : `${out} ${phrase`Its ${scores} scores are kept and not counted.`}`;
}
