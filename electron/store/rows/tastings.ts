import type { ValueOf } from '#shared/contract/all-requests.ts';
import { type ListPart, type Part, partOf } from '../part-of-list.ts';
import type { Reader } from '../reader.ts';
import type { Row } from '../tables.ts';

export type TastingWhole = ValueOf<'tastings:open'>;
type Summary = ValueOf<'tastings:list'>['tastings'][number];
type Sample = TastingWhole['sampleList'][number];
export type NamedScore = ValueOf<'findings:read'>['scores'][number];

type SummaryRow = Row<'tastings'> & {
  ranked: 0 | 1;
  samples: number;
  tasters: number;
  scores: number;
  expected: number;
};

const takenOutOf = 'samples AS x WHERE x.tasting_id = t.id AND x.taken_out_at IS NOT NULL';

const withCounts = `
  SELECT t.*,
    EXISTS (SELECT 1 FROM attributes WHERE tasting_id = t.id AND kind = 'place') AS ranked,
    (SELECT count(*) FROM samples WHERE tasting_id = t.id AND taken_out_at IS NULL) AS samples,
    coalesce(n.tasters, 0) AS tasters,
    coalesce(n.scores, 0) - (SELECT count(c.id) FROM scores AS c WHERE c.sample_id IN (SELECT x.id FROM ${takenOutOf})) AS scores,
    (coalesce(n.servings, 0) - (SELECT count(v.id) FROM servings AS v WHERE v.sample_id IN (SELECT x.id FROM ${takenOutOf})))
      * (SELECT count(*) FROM attributes WHERE tasting_id = t.id) AS expected
  FROM tastings AS t LEFT JOIN tasting_counts AS n ON n.tasting_id = t.id`;

function summaryOf(row: SummaryRow): Summary {
  return {
    id: row.id,
    isSample: row.is_sample === 1,
    name: row.name,
    trial: row.trial_id,
    heldAt: row.held_at,
    closedAt: row.closed_at,
    isRanked: row.ranked === 1,
    samples: row.samples,
    tasters: row.tasters,
    scores: row.scores,
    expected: row.expected,
  };
}

/** The newest first; of one trial, when it is named. */
export function listTastings(
  read: Reader,
  part: Part & { readonly trial?: string | undefined } = {},
): ListPart<Summary> {
  const ofTrial = part.trial === undefined ? {} : { where: 't.trial_id = ?', values: [part.trial] };
  const { rows, more } = partOf<SummaryRow>(read, { select: withCounts, at: 'held_at', ...ofTrial }, part);
  return { rows: rows.map(summaryOf), more };
}

/** The samples in the order of their codes, which tells nothing. `blind` keeps the jars out. */
export function samplesOf(read: Reader, tasting: string, blind: boolean): Sample[] {
  return read
    .all<Row<'samples'> & { label: string; level: string }>(
      `SELECT s.*, j.label, l.name AS level
       FROM samples AS s JOIN jars AS j ON j.id = s.jar_id JOIN levels AS l ON l.id = j.level_id
       WHERE s.tasting_id = ? ORDER BY s.blind_code`,
      tasting,
    )
    .map((row) => ({
      id: row.id,
      code: row.blind_code,
      served_mL: row.served_mL,
      jar: blind ? null : { id: row.jar_id, label: row.label, level: row.level },
      takenOut: row.taken_out_at === null ? null : { at: row.taken_out_at, why: row.taken_out_why ?? '' },
    }));
}

export function attributesOf(read: Reader, tasting: string): TastingWhole['attributes'] {
  return read
    .all<Row<'attributes'>>('SELECT * FROM attributes WHERE tasting_id = ? ORDER BY position', tasting)
    .map((row) => ({
      id: row.id,
      name: row.name,
      kind: row.kind as TastingWhole['attributes'][number]['kind'],
      low: row.low,
      high: row.high,
      lowWord: row.low_word,
      highWord: row.high_word,
    }));
}

export interface Serving {
  readonly taster: string;
  readonly name: string;
  readonly sitting: number;
  readonly code: string;
  readonly jar: string;
}

export function servingsOf(read: Reader, tasting: string): Serving[] {
  return read.all<Serving>(
    `SELECT v.taster_id AS taster, t.name, v.sitting, s.blind_code AS code, s.jar_id AS jar
     FROM servings AS v JOIN tasters AS t ON t.id = v.taster_id JOIN samples AS s ON s.id = v.sample_id
     WHERE v.tasting_id = ? ORDER BY t.name, v.taster_id, v.sitting, v.place`,
    tasting,
  );
}

export function findTasting(
  read: Reader,
  id: string,
): (Omit<TastingWhole, 'orders'> & { readonly row: Row<'tastings'> }) | undefined {
  const row = read.one<SummaryRow>(`${withCounts} WHERE t.id = ?`, id);
  if (row === undefined) return undefined;
  return {
    row,
    ...summaryOf(row),
    served_C: row.served_C,
    replicates: row.replicates,
    note: row.note,
    attributes: attributesOf(read, id),
    sampleList: samplesOf(read, id, row.closed_at === null),
  };
}

/** The scores of one tasting by taster's name and blind code. */
export function scoresOfTasting(read: Reader, tasting: string): ValueOf<'scores:list'>['scores'] {
  return read.all(
    `SELECT t.name AS taster, s.blind_code AS sample, a.name AS attribute, c.replicate, c.score
     FROM scores AS c JOIN tasters AS t ON t.id = c.taster_id JOIN samples AS s ON s.id = c.sample_id
     JOIN attributes AS a ON a.id = c.attribute_id
     WHERE c.tasting_id = ? ORDER BY t.name, s.blind_code, a.position, c.replicate`,
    tasting,
  );
}

/** What the tasters said, by taster's name and blind code. */
export function remarksOfTasting(read: Reader, tasting: string): ValueOf<'remarks:list'>['remarks'] {
  return read.all(
    `SELECT t.name AS taster, s.blind_code AS sample, r.words
     FROM remarks AS r JOIN tasters AS t ON t.id = r.taster_id JOIN samples AS s ON s.id = r.sample_id
     WHERE r.tasting_id = ? ORDER BY t.name, s.blind_code`,
    tasting,
  );
}

/** The answers of a trial's closed tastings that count, by level and jar: scores on a scale, or those of another kind. */
export function revealedScores(
  read: Reader,
  trial: string,
  kind: TastingWhole['attributes'][number]['kind'] = 'scale',
): NamedScore[] {
  return read.all<NamedScore>(
    `SELECT t.name AS taster, l.name AS sample, a.name AS attribute, c.score, j.label AS jar,
       row_number() OVER (PARTITION BY c.taster_id, l.id, a.name ORDER BY g.held_at, j.replicate, c.replicate) AS replicate
     FROM tastings AS g JOIN scores AS c ON c.tasting_id = g.id JOIN tasters AS t ON t.id = c.taster_id
     JOIN samples AS s ON s.id = c.sample_id JOIN jars AS j ON j.id = s.jar_id JOIN levels AS l ON l.id = j.level_id
     JOIN attributes AS a ON a.id = c.attribute_id
     WHERE l.trial_id = ? AND g.closed_at IS NOT NULL AND s.taken_out_at IS NULL AND a.kind = ?
     ORDER BY a.position, l.position, t.name, replicate`,
    trial,
    kind,
  );
}

/** The ends of each attribute's scale over a trial's closed tastings. */
export function scalesOfTrial(read: Reader, trial: string): Record<string, [number, number]> {
  const rows = read.all<{ name: string; low: number; high: number }>(
    `SELECT a.name, min(a.low) AS low, max(a.high) AS high FROM attributes AS a JOIN tastings AS g ON g.id = a.tasting_id
     WHERE g.trial_id = ? AND g.closed_at IS NOT NULL AND a.kind = 'scale' GROUP BY a.name`,
    trial,
  );
  return Object.fromEntries(rows.map(({ name, low, high }) => [name, [low, high]]));
}

/** Codes on open tastings, and a rank for every code ever used: larger is more recent. */
export function blindCodeUse(read: Reader): { inUse: string[]; lastUsed: Record<string, number> } {
  const inUse = read.all<{ code: string }>(
    // CROSS: from the few open tastings to their samples, never from all samples ever.
    `SELECT DISTINCT s.blind_code AS code FROM tastings AS t CROSS JOIN samples AS s ON s.tasting_id = t.id WHERE t.closed_at IS NULL`,
  );
  const used = read.all<{ code: string }>(
    'SELECT blind_code AS code FROM samples GROUP BY blind_code ORDER BY max(created_at)',
  );
  return {
    inUse: inUse.map(({ code }) => code),
    lastUsed: Object.fromEntries(used.map(({ code }, rank) => [code, rank])),
  };
}
