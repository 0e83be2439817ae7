import type { Reader } from '../reader.ts';

// The rows that may want something today, each with when it was last seen to.

export interface NeedingJar {
  readonly id: string;
  readonly label: string;
  readonly is_sample: 0 | 1;
  readonly trial_id: string;
  readonly question: string;
  readonly held: string;
  readonly vessel_kind: string;
  readonly planned_start: string;
  readonly planned_pull: string;
  readonly started_at: string | null;
  readonly pulled_at: string | null;
  readonly strained_at: string | null;
  readonly looked_at: string | null;
  readonly stirred_at: string | null;
  /** 1 when a tasting or a test poured it, or the maker sipped of it since it was pulled. */
  readonly is_tasted: 0 | 1;
}

/** The jars that are planned or stand, and those that came out since a moment; none that is discarded, none of a closed trial. */
export function needingJars(read: Reader, outSince: string): NeedingJar[] {
  const sql = `
    SELECT j.id, j.label, j.is_sample, j.trial_id, t.question, t.held, t.vessel_kind, j.planned_start, j.planned_pull,
      j.started_at, j.pulled_at, j.strained_at,
      (SELECT max(at) FROM (
        SELECT max(seen_at) AS at FROM sightings WHERE jar_id = j.id AND corrected_at IS NULL
        UNION ALL SELECT max(taken_at) FROM readings WHERE jar_id = j.id
        UNION ALL SELECT max(taken_at) FROM sips WHERE jar_id = j.id)) AS looked_at,
      (SELECT max(seen_at) FROM sightings WHERE jar_id = j.id AND what = 'stirred' AND corrected_at IS NULL) AS stirred_at,
      (EXISTS (SELECT 1 FROM samples WHERE jar_id = j.id AND taken_out_at IS NULL)
        OR EXISTS (SELECT 1 FROM discriminations WHERE jar_a_id = j.id OR jar_b_id = j.id)
        OR EXISTS (SELECT 1 FROM sips WHERE jar_id = j.id AND taken_at >= coalesce(j.pulled_at, j.strained_at))) AS is_tasted
    FROM jars AS j CROSS JOIN trials AS t ON t.id = j.trial_id CROSS JOIN levels AS l ON l.id = j.level_id
    WHERE j.id IN (
      SELECT id FROM jars INDEXED BY jars_open WHERE pulled_at IS NULL AND strained_at IS NULL AND discarded_at IS NULL
      UNION ALL SELECT id FROM jars INDEXED BY jars_by_pulled WHERE pulled_at >= ?
      UNION ALL SELECT id FROM jars INDEXED BY jars_by_strained WHERE strained_at >= ?)
      AND j.discarded_at IS NULL AND t.closed_at IS NULL
    ORDER BY t.starts_at, l.position, j.replicate`;
  return read.all<NeedingJar>(sql, outSince, outSince);
}

export interface NeedingBase {
  readonly id: string;
  readonly name: string;
  readonly is_sample: 0 | 1;
  readonly made_at: string;
  readonly planned_hours: number | null;
}

export function unstrainedBases(read: Reader): NeedingBase[] {
  return read.all<NeedingBase>(
    'SELECT id, name, is_sample, made_at, planned_hours FROM bases WHERE strained_at IS NULL ORDER BY made_at',
  );
}

export interface NeedingCulture {
  readonly id: string;
  readonly name: string;
  readonly is_sample: 0 | 1;
  readonly rests: string | null;
  readonly refresh_days: number | null;
  readonly fed_at: string;
  readonly is_reviving: 0 | 1;
}

/** A culture is being woken while the last that was logged of a revival is a feed. */
export const revivingSql = `coalesce((SELECT what = 'revival-feed' FROM culture_log
  WHERE culture_id = c.id AND what IN ('revival-feed', 'revived') ORDER BY done_at DESC, id DESC LIMIT 1), 0)`;

/** The cultures, each with when it was last fed; one that never was counts from when it was written down. */
export function fedCultures(read: Reader): NeedingCulture[] {
  return read.all<NeedingCulture>(`
    SELECT c.id, c.name, c.is_sample, c.rests, c.refresh_days, ${revivingSql} AS is_reviving,
      max(coalesce(c.refreshed_at, ''), coalesce((SELECT max(done_at) FROM culture_log
        WHERE culture_id = c.id AND what IN ('refreshed', 'revival-feed', 'revived')), ''),
        CASE WHEN c.refreshed_at IS NULL THEN c.created_at ELSE '' END) AS fed_at
    FROM cultures AS c ORDER BY c.name`);
}

export interface NeedingTasting {
  readonly id: string;
  readonly name: string;
  readonly is_sample: 0 | 1;
  readonly held_at: string;
  readonly trial_id: string | null;
  readonly question: string | null;
}

export function openTastings(read: Reader): NeedingTasting[] {
  return read.all<NeedingTasting>(`
    SELECT g.id, g.name, g.is_sample, g.held_at, g.trial_id, t.question
    FROM tastings AS g INDEXED BY tastings_open LEFT JOIN trials AS t ON t.id = g.trial_id
    WHERE g.closed_at IS NULL`);
}

export interface PutOff {
  readonly id: string;
  readonly subject: string;
  readonly need: string;
  readonly until_at: string;
  readonly reason: string | null;
}

/** What is put off beyond `now`. */
export function putOffsAfter(read: Reader, now: string): PutOff[] {
  return read.all<PutOff>(
    `SELECT id, coalesce(jar_id, base_id, culture_id, tasting_id) AS subject, need, until_at, reason
     FROM snoozes WHERE until_at > ?`,
    now,
  );
}

/** Bottles that nobody has opened yet. */
export function bottlesWaiting(read: Reader): number {
  const { waiting } = read.one<{ waiting: number }>(
    `SELECT coalesce(sum(b.count), 0) - (SELECT total FROM row_counts WHERE table_name = 'bottle_openings') AS waiting
     FROM bottlings AS b`,
  ) ?? { waiting: 0 };
  return waiting;
}
