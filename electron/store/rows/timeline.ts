import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { Reader } from '../reader.ts';

type Timeline = ValueOf<'trials:timeline'>;
type Entry = Timeline['jars'][number]['entries'][number];

/** Everything written down of a trial's jars, the oldest first, by jar; mistaken sightings left out. */
export function entriesOfTrial(read: Reader, trial: string): Map<string, Entry[]> {
  const rows = read.all<Entry & { jar: string }>(
    `SELECT j.id AS jar, r.taken_at AS at, 'reading' AS kind, NULL AS what
       FROM jars AS j JOIN readings AS r ON r.jar_id = j.id WHERE j.trial_id = ?
     UNION ALL SELECT j.id, s.seen_at, 'sighting', s.what
       FROM jars AS j JOIN sightings AS s ON s.jar_id = j.id WHERE j.trial_id = ? AND s.corrected_at IS NULL
     UNION ALL SELECT j.id, s.taken_at, 'sip', NULL FROM jars AS j JOIN sips AS s ON s.jar_id = j.id WHERE j.trial_id = ?
     UNION ALL SELECT j.id, p.taken_at, 'photo', NULL FROM jars AS j JOIN photos AS p ON p.jar_id = j.id WHERE j.trial_id = ?
     ORDER BY 2`,
    trial,
    trial,
    trial,
    trial,
  );
  const byJar = new Map<string, Entry[]>();
  for (const { jar, at, kind, what } of rows) byJar.set(jar, [...(byJar.get(jar) ?? []), { at, kind, what }]);
  return byJar;
}

export function tastingsOfTrial(read: Reader, trial: string): Timeline['tastings'] {
  return read.all(
    'SELECT id, name, held_at AS heldAt, closed_at AS closedAt FROM tastings WHERE trial_id = ? ORDER BY held_at, id',
    trial,
  );
}
