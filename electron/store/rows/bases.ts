import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { Reader } from '../reader.ts';
import type { Row } from '../tables.ts';

type Base = ValueOf<'bases:list'>['bases'][number];

type BaseRow = Row<'bases'> & { culture_name: string | null; culture_kind: string | null; allotted_mL: number };

const withAllotment = `
  SELECT b.*, c.name AS culture_name, c.kind AS culture_kind,
    (SELECT coalesce(sum(j.base_mL), 0) FROM jars AS j JOIN trials AS t ON t.id = j.trial_id WHERE t.base_id = b.id) AS allotted_mL
  FROM bases AS b LEFT JOIN cultures AS c ON c.id = b.culture_id`;

function baseOf(row: BaseRow): Base {
  return {
    id: row.id,
    revision: row.revision,
    isSample: row.is_sample === 1,
    name: row.name,
    culture:
      row.culture_id === null
        ? null
        : { id: row.culture_id, name: row.culture_name ?? '', kind: row.culture_kind ?? '' },
    madeAt: row.made_at,
    strainedAt: row.strained_at,
    volume_mL: row.volume_mL,
    allotted_mL: row.allotted_mL,
    left_mL: row.volume_mL - row.allotted_mL,
    temperature_C: row.temperature_C,
    sugarStart_g_per_L: row.sugar_start_g_per_L,
    sugarNow_g_per_L: row.sugar_now_g_per_L,
    alcohol_pctVol: row.alcohol_pctVol,
    note: row.note,
    plannedHours: row.planned_hours,
    wentIn: row.went_in,
  };
}

export function listBases(read: Reader): Base[] {
  return read.all<BaseRow>(`${withAllotment} ORDER BY b.made_at DESC`).map(baseOf);
}

export function findBase(read: Reader, id: string): Base | undefined {
  const row = read.one<BaseRow>(`${withAllotment} WHERE b.id = ?`, id);
  return row === undefined ? undefined : baseOf(row);
}
