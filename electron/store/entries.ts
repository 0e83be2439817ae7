import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { Reader } from './reader.ts';
import type { Row } from './tables.ts';

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

/** What was seen in one jar or base, the oldest first. */
export function sightingsOf(read: Reader, owner: Owner, id: string): JarPage['sightings'] {
  return read.all<Row<'sightings'>>(`SELECT * FROM sightings WHERE ${owner} = ? ORDER BY seen_at`, id).map((row) => ({
    id: row.id,
    seenAt: row.seen_at,
    what: row.what as JarPage['sightings'][number]['what'],
    note: row.note,
  }));
}
