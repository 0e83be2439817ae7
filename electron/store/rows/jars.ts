import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { Reader } from '../reader.ts';
import type { Row } from '../tables.ts';
import { readingsOf, sightingsOf } from './entries.ts';

type JarPage = ValueOf<'jars:open'>;
export type Jar = JarPage['jar'];

type JarRow = Row<'jars'> & { level_name: string; is_control: 0 | 1; froth: string | null };

const withLevel = `
  SELECT j.*, l.name AS level_name, l.is_control, l.position,
    (SELECT what FROM sightings WHERE jar_id = j.id AND corrected_at IS NULL AND what IN ('froth', 'bubbles-slowing', 'clear')
      ORDER BY seen_at DESC, id DESC LIMIT 1) AS froth
  FROM jars AS j JOIN levels AS l ON l.id = j.level_id`;

function stateOf(row: Row<'jars'>): Jar['state'] {
  if (row.discarded_at !== null) return 'discarded';
  if (row.strained_at !== null) return 'strained';
  if (row.pulled_at !== null) return 'pulled';
  return row.started_at === null ? 'planned' : 'fermenting';
}

function jarOf(row: JarRow): Jar {
  return {
    id: row.id,
    revision: row.revision,
    isSample: row.is_sample === 1,
    trial: row.trial_id,
    level: row.level_id,
    levelName: row.level_name,
    label: row.label,
    replicate: row.replicate,
    isControl: row.is_control === 1,
    state: stateOf(row),
    base_mL: row.base_mL,
    plannedStart: row.planned_start,
    plannedPull: row.planned_pull,
    startedAt: row.started_at,
    pulledAt: row.pulled_at,
    strainedAt: row.strained_at,
    discardedAt: row.discarded_at,
    discardReason: row.discard_reason,
    isFrothy: row.froth === 'froth' && row.strained_at === null && row.discarded_at === null,
  };
}

export function findJar(read: Reader, id: string): Jar | undefined {
  const row = read.one<JarRow>(`${withLevel} WHERE j.id = ?`, id);
  return row === undefined ? undefined : jarOf(row);
}

export function jarsOfTrial(read: Reader, trial: string): Jar[] {
  return read.all<JarRow>(`${withLevel} WHERE j.trial_id = ? ORDER BY l.position, j.replicate`, trial).map(jarOf);
}

export function readingsOfJar(read: Reader, jar: string): JarPage['readings'] {
  return readingsOf(read, 'jar_id', jar);
}

export function sightingsOfJar(read: Reader, jar: string): JarPage['sightings'] {
  return sightingsOf(read, 'jar_id', jar);
}

function sipOf(row: Row<'sips'>): JarPage['sips'][number] {
  return {
    id: row.id,
    takenAt: row.taken_at,
    tang: row.tang,
    fizz: row.fizz,
    sweetness: row.sweetness,
    liking: row.liking,
    note: row.note,
  };
}

export function sipsOfJar(read: Reader, jar: string): JarPage['sips'] {
  return read.all<Row<'sips'>>('SELECT * FROM sips WHERE jar_id = ? ORDER BY taken_at', jar).map(sipOf);
}

/** The maker's own tastes of a trial's jars; `day` counts from the jar's start. */
export function sipsOfTrial(read: Reader, trial: string): ValueOf<'sips:byTrial'>['sips'] {
  return read
    .all<Row<'sips'> & { label: string; level_name: string; started: string }>(
      `SELECT s.*, j.label, l.name AS level_name, coalesce(j.started_at, j.planned_start) AS started
       FROM jars AS j JOIN sips AS s ON s.jar_id = j.id JOIN levels AS l ON l.id = j.level_id
       WHERE j.trial_id = ? ORDER BY s.taken_at`,
      trial,
    )
    .map((row) => ({
      ...sipOf(row),
      jar: row.jar_id,
      label: row.label,
      levelName: row.level_name,
      day: (Date.parse(row.taken_at) - Date.parse(row.started)) / 86_400_000,
    }));
}
