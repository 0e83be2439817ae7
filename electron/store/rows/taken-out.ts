import type { Reader } from '../reader.ts';
import type { Row } from '../tables.ts';
import type { Writer } from '../writer.ts';

// A jar that is discarded leaves the tastings that are still open: its sample stays with its scores, and doesn't count.

type SampleRow = Row<'samples'> & { name: string; closed_at: string | null };

function samplesOfJar(read: Reader, jar: string): SampleRow[] {
  return read.all<SampleRow>(
    `SELECT s.*, g.name, g.closed_at FROM samples AS s JOIN tastings AS g ON g.id = s.tasting_id
     WHERE s.jar_id = ? ORDER BY g.held_at, g.id`,
    jar,
  );
}

/**
 * Takes a jar's samples out of every tasting that is not revealed yet.
 *
 * @param at when the jar was discarded: `bringBack` knows its samples by it
 * @returns the names of those tastings
 */
export function takeOut(writer: Writer, jar: string, at: string, why: string): string[] {
  const standing = samplesOfJar(writer, jar).filter((one) => one.closed_at === null && one.taken_out_at === null);
  for (const { id } of standing) writer.update('samples', id, { taken_out_at: at, taken_out_why: why });
  return standing.map(({ name }) => name);
}

/**
 * Brings a jar's samples back that were taken out when it was discarded, where the tasting is still open.
 *
 * @returns the names of the tastings that have it again, and of those that were revealed without it and stay so
 */
export function bringBack(writer: Writer, jar: string, discardedAt: string): { tastings: string[]; without: string[] } {
  const gone = samplesOfJar(writer, jar).filter((one) => one.taken_out_at === discardedAt);
  const open = gone.filter((one) => one.closed_at === null);
  for (const { id } of open) writer.update('samples', id, { taken_out_at: null, taken_out_why: null });
  return {
    tastings: open.map(({ name }) => name),
    without: gone.filter((one) => one.closed_at !== null).map(({ name }) => name),
  };
}

export interface TakenOut {
  readonly tasting: string;
  readonly name: string;
  readonly jar: string;
  readonly level: string;
  readonly why: string;
  readonly scores: number;
}

/** The jars that left a trial's closed tastings before these were revealed, and how many scores of them don't count. */
export function takenOutOfTrial(read: Reader, trial: string): TakenOut[] {
  return read.all<TakenOut>(
    `SELECT g.id AS tasting, g.name, j.label AS jar, l.name AS level, s.taken_out_why AS why,
       (SELECT count(*) FROM scores WHERE sample_id = s.id) AS scores
     FROM jars AS j JOIN levels AS l ON l.id = j.level_id JOIN samples AS s ON s.jar_id = j.id
     JOIN tastings AS g ON g.id = s.tasting_id
     WHERE j.trial_id = ? AND s.taken_out_at IS NOT NULL AND g.closed_at IS NOT NULL
     ORDER BY g.held_at, l.position, j.replicate`,
    trial,
  );
}
