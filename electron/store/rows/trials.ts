import type { Formula, Vessel } from '#core/trial/formula.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { type ListPart, type Part, partOf } from '../part-of-list.ts';
import type { Reader } from '../reader.ts';
import type { Row } from '../tables.ts';
import { mouldOfBase } from './entries.ts';
import { jarsOfTrial } from './jars.ts';

type Summary = ValueOf<'trials:list'>['trials'][number];
export type TrialWhole = ValueOf<'trials:open'>;

interface Counts {
  level_names: string;
  /** JSON of: the last planned pull, how many jars, how many started, how many standing. */
  jar_facts: string;
  tasting_count: number;
}
type SummaryRow = Row<'trials'> & Counts;

const stands = 'started_at IS NOT NULL AND pulled_at IS NULL AND strained_at IS NULL AND discarded_at IS NULL';
const withCounts = `
  SELECT t.*,
    (SELECT json_group_array(name) FROM (SELECT name FROM levels WHERE trial_id = t.id ORDER BY position)) AS level_names,
    (SELECT json_array(max(planned_pull), count(*), count(started_at), coalesce(sum(${stands}), 0))
      FROM jars WHERE trial_id = t.id) AS jar_facts,
    (SELECT count(*) FROM tastings WHERE trial_id = t.id) AS tasting_count
  FROM trials AS t`;

function stateOf(closedAt: string | null, started: number, standing: number): Summary['state'] {
  if (closedAt !== null) return 'closed';
  if (standing > 0) return 'fermenting';
  return started > 0 ? 'pulled' : 'planned';
}

function summaryOf(row: SummaryRow): Summary {
  const [endsAt, jars, started, standing] = JSON.parse(row.jar_facts) as [string, number, number, number];
  return {
    id: row.id,
    revision: row.revision,
    isSample: row.is_sample === 1,
    question: row.question,
    factor: row.factor as Summary['factor'],
    startsAt: row.starts_at,
    endsAt,
    state: stateOf(row.closed_at, started, standing),
    levels: JSON.parse(row.level_names) as string[],
    jars,
    standing,
    tastings: row.tasting_count,
  };
}

/** Trials with a jar that is planned or stands: from the few open jars to their trials, never through all trials. */
const isAwake = `t.closed_at IS NULL AND t.id IN (SELECT trial_id FROM jars INDEXED BY jars_open
  WHERE pulled_at IS NULL AND strained_at IS NULL AND discarded_at IS NULL)`;

/** The newest first. */
export function listTrials(read: Reader, part: Part & { readonly only?: 'awake' | undefined } = {}): ListPart<Summary> {
  const whole = { select: withCounts, at: 'starts_at', ...(part.only === 'awake' ? { where: isAwake } : {}) };
  const { rows, more } = partOf<SummaryRow>(read, whole, part);
  return { rows: rows.map(summaryOf), more };
}

export function vesselOf(row: Row<'trials'>): Vessel {
  return {
    kind: row.vessel_kind as Vessel['kind'],
    capacity_mL: row.vessel_capacity_mL,
    ...(row.vessel_diameter_mm === null ? {} : { diameter_mm: row.vessel_diameter_mm }),
    ...(row.vessel_rated_gauge_bar === null ? {} : { ratedGauge_bar: row.vessel_rated_gauge_bar }),
  };
}

export function levelsOfTrial(read: Reader, trial: string): TrialWhole['levelsWhole'] {
  return read.all<Row<'levels'>>('SELECT * FROM levels WHERE trial_id = ? ORDER BY position', trial).map((row) => ({
    id: row.id,
    name: row.name,
    value: row.value,
    isControl: row.is_control === 1,
    formula: JSON.parse(row.formula) as Formula & { additions: TrialWhole['held']['additions'] },
  }));
}

export function findTrial(read: Reader, id: string): TrialWhole | undefined {
  const row = read.one<SummaryRow>(`${withCounts} WHERE t.id = ?`, id);
  if (row === undefined) return undefined;
  const base = row.base_id === null ? undefined : read.row('bases', row.base_id);
  return {
    ...summaryOf(row),
    calendar: row.calendar as TrialWhole['calendar'],
    base: base === undefined ? null : { id: base.id, name: base.name },
    baseMould: row.base_id === null ? null : mouldOfBase(read, row.base_id),
    baseEach_mL: row.base_each_mL,
    replicates: row.replicates,
    vessel: vesselOf(row),
    held: JSON.parse(row.held) as TrialWhole['held'],
    seed: row.seed,
    note: row.note,
    levelsWhole: levelsOfTrial(read, id),
    jarsWhole: jarsOfTrial(read, id),
    tastingIds: read
      .all<{ id: string }>('SELECT id FROM tastings WHERE trial_id = ? ORDER BY held_at', id)
      .map((tasting) => tasting.id),
  };
}
