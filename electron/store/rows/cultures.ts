import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { Reader } from '../reader.ts';
import type { Row } from '../tables.ts';
import { revivingSql } from './needing.ts';

type Culture = ValueOf<'cultures:list'>['cultures'][number];
type CulturePage = ValueOf<'cultures:open'>;

type CultureRow = Row<'cultures'> & { parent_name: string | null; is_reviving: 0 | 1 };

const withParent = `
  SELECT c.*, p.name AS parent_name, ${revivingSql} AS is_reviving
  FROM cultures AS c LEFT JOIN cultures AS p ON p.id = c.parent_id`;

function cultureOf(row: CultureRow): Culture {
  return {
    id: row.id,
    revision: row.revision,
    isSample: row.is_sample === 1,
    name: row.name,
    kind: row.kind,
    weight_g: row.weight_g,
    refreshedAt: row.refreshed_at,
    rests: row.rests,
    note: row.note,
    refreshDays: row.refresh_days,
    parent: row.parent_id === null ? null : { id: row.parent_id, name: row.parent_name ?? '' },
    isReviving: row.is_reviving === 1,
  };
}

export function listCultures(read: Reader): Culture[] {
  return read.all<CultureRow>(`${withParent} ORDER BY c.name`).map(cultureOf);
}

/** One culture with all that was done to it, the oldest first, and what came of it. */
export function findCulture(read: Reader, id: string): CulturePage | undefined {
  const row = read.one<CultureRow>(`${withParent} WHERE c.id = ?`, id);
  if (row === undefined) return undefined;
  return {
    ...cultureOf(row),
    log: read
      .all<Row<'culture_log'>>('SELECT * FROM culture_log WHERE culture_id = ? ORDER BY done_at, id', id)
      .map((entry) => ({
        id: entry.id,
        at: entry.done_at,
        what: entry.what as CulturePage['log'][number]['what'],
        weight_g: entry.weight_g,
        note: entry.note,
      })),
    children: read.all('SELECT id, name FROM cultures WHERE parent_id = ? ORDER BY created_at', id),
    bases: read.all('SELECT id, name FROM bases WHERE culture_id = ? ORDER BY made_at DESC', id),
  };
}
