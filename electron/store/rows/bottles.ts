import { bottlePressure } from '#core/ferment/bottle-pressure.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { Reader } from '../reader.ts';
import type { Row } from '../tables.ts';

type Bottling = ValueOf<'bottles:list'>['bottlings'][number];

type BottlingRow = Row<'bottlings'> & {
  label: string | null;
  trial_id: string | null;
  question: string | null;
  recipe_id: string | null;
  recipe_name: string | null;
  version_number: number | null;
};

const withSource = `
  SELECT b.*, j.label, j.trial_id, t.question, v.recipe_id, h.name AS recipe_name, v.number AS version_number
  FROM bottlings AS b
  LEFT JOIN jars AS j ON j.id = b.jar_id LEFT JOIN trials AS t ON t.id = j.trial_id
  LEFT JOIN batches AS m ON m.id = b.batch_id LEFT JOIN recipe_versions AS v ON v.id = m.version_id
  LEFT JOIN house_recipes AS h ON h.id = v.recipe_id`;

function fromOf(row: BottlingRow): Bottling['from'] {
  return row.jar_id === null
    ? {
        kind: 'batch',
        batch: row.batch_id ?? '',
        recipe: row.recipe_id ?? '',
        name: row.recipe_name ?? '',
        version: row.version_number ?? 1,
      }
    : {
        kind: 'jar',
        jar: row.jar_id,
        label: row.label ?? '',
        trial: row.trial_id ?? '',
        question: row.question ?? '',
      };
}

function openingsOf(read: Reader, bottling: string): Bottling['openings'] {
  return read
    .all<Row<'bottle_openings'>>('SELECT * FROM bottle_openings WHERE bottling_id = ? ORDER BY opened_at, id', bottling)
    .map(({ id, opened_at, pour, note }) => ({
      id,
      openedAt: opened_at,
      pour: pour as Bottling['openings'][number]['pour'],
      note,
    }));
}

function bottlingOf(read: Reader, row: BottlingRow): Bottling {
  const openings = openingsOf(read, row.id);
  const closure = row.closure as Bottling['closure'];
  const { gauge_bar, cautions } = bottlePressure({
    closure,
    size_mL: row.size_mL,
    ...(row.rated_gauge_bar === null ? {} : { ratedGauge_bar: row.rated_gauge_bar }),
    ...(row.sugar_g_per_L === null ? {} : { sugar_g_per_L: row.sugar_g_per_L }),
  });
  return {
    id: row.id,
    revision: row.revision,
    isSample: row.is_sample === 1,
    from: fromOf(row),
    bottledAt: row.bottled_at,
    count: row.count,
    size_mL: row.size_mL,
    closure,
    ratedGauge_bar: row.rated_gauge_bar,
    lot: row.lot,
    sugar_g_per_L: row.sugar_g_per_L,
    chilledAt: row.chilled_at,
    note: row.note,
    openings,
    left: row.count - openings.length,
    gauge_bar,
    cautions,
  };
}

/** Bottlings, the latest first: all, or those of one jar or one batch. */
export function listBottlings(read: Reader, { jar, batch }: { jar?: string | undefined; batch?: string | undefined }) {
  const [where, value] =
    jar !== undefined
      ? ['WHERE b.jar_id = ?', jar]
      : batch !== undefined
        ? ['WHERE b.batch_id = ?', batch]
        : ['', null];
  const sql = `${withSource} ${where} ORDER BY b.bottled_at DESC, b.id DESC`;
  const rows = value === null ? read.all<BottlingRow>(sql) : read.all<BottlingRow>(sql, value);
  return rows.map((row) => bottlingOf(read, row));
}
