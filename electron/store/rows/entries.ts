import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { Reader } from '../reader.ts';
import type { Row } from '../tables.ts';

type JarPage = ValueOf<'jars:open'>;
/** A reading or a sighting belongs to a jar or to a base. */
type Owner = 'jar_id' | 'base_id';

/** The readings of one jar or base, the oldest first. */
export function readingsOf(read: Reader, owner: Owner, id: string): JarPage['readings'] {
  return read.all<Row<'readings'>>(`SELECT * FROM readings WHERE ${owner} = ? ORDER BY taken_at`, id).map((row) => ({
    id: row.id,
    takenAt: row.taken_at,
    brix: row.brix,
    sg: row.sg,
    ph: row.ph,
    acidity_g_per_L: row.acidity_g_per_L,
    acidityAs: row.acidity_as as JarPage['readings'][number]['acidityAs'],
    temperature_C: row.temperature_C,
    note: row.note,
  }));
}

/** What was seen in one jar or base, the oldest first; what was a mistake stays in the list, marked. */
export function sightingsOf(read: Reader, owner: Owner, id: string): JarPage['sightings'] {
  return read.all<Row<'sightings'>>(`SELECT * FROM sightings WHERE ${owner} = ? ORDER BY seen_at`, id).map((row) => ({
    id: row.id,
    seenAt: row.seen_at,
    what: row.what as JarPage['sightings'][number]['what'],
    note: row.note,
    correctedAt: row.corrected_at,
    correction: row.correction,
  }));
}

/** Mould that was seen in a base and was no mistake; null without any. */
export function mouldOfBase(read: Reader, base: string): JarPage['baseMould'] {
  const seen = read.one<{ name: string; seen_at: string }>(
    `SELECT b.name, s.seen_at FROM sightings AS s JOIN bases AS b ON b.id = s.base_id
     WHERE s.base_id = ? AND s.what = 'mould' AND s.corrected_at IS NULL ORDER BY s.seen_at LIMIT 1`,
    base,
  );
  return seen === undefined ? null : { base, name: seen.name, seenAt: seen.seen_at };
}
