import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { Reader } from '../reader.ts';
import type { Row } from '../tables.ts';

type Summary = ValueOf<'discriminations:list'>['discriminations'][number];
type SummaryRow = Row<'discriminations'> & { presentations: number; answered: number };

const withCounts = `
  SELECT d.*,
    (SELECT count(*) FROM presentations WHERE discrimination_id = d.id) AS presentations,
    (SELECT count(*) FROM presentations WHERE discrimination_id = d.id AND chosen IS NOT NULL) AS answered
  FROM discriminations AS d`;

function summaryOf(row: SummaryRow): Summary {
  return {
    id: row.id,
    isSample: row.is_sample === 1,
    name: row.name,
    trial: row.trial_id,
    method: row.method as Summary['method'],
    heldAt: row.held_at,
    closedAt: row.closed_at,
    presentations: row.presentations,
    answered: row.answered,
  };
}

export function listDiscriminations(read: Reader): Summary[] {
  return read.all<SummaryRow>(`${withCounts} ORDER BY d.held_at DESC, d.id DESC`).map(summaryOf);
}

export function findDiscrimination(
  read: Reader,
  id: string,
): { summary: Summary; row: Row<'discriminations'> } | undefined {
  const row = read.one<SummaryRow>(`${withCounts} WHERE d.id = ?`, id);
  return row === undefined ? undefined : { summary: summaryOf(row), row };
}

/** One round of one taster, as served. */
export interface Presentation {
  readonly id: string;
  readonly taster_id: string;
  readonly tasterName: string;
  readonly round: number;
  readonly cups: string;
  readonly codes: string;
  readonly chosen: number | null;
}

export function presentationsOf(read: Reader, discrimination: string): Presentation[] {
  return read.all<Presentation>(
    `SELECT p.id, p.taster_id, t.name AS tasterName, p.round, p.cups, p.codes, p.chosen
     FROM presentations AS p JOIN tasters AS t ON t.id = p.taster_id
     WHERE p.discrimination_id = ? ORDER BY p.round, t.name`,
    discrimination,
  );
}

/** Codes on the cups of tests that are still open. */
export function openCupCodes(read: Reader): string[] {
  return read
    .all<{ code: string }>(
      `SELECT DISTINCT c.value AS code FROM discriminations AS d CROSS JOIN presentations AS p ON p.discrimination_id = d.id
       CROSS JOIN json_each(p.codes) AS c WHERE d.closed_at IS NULL`,
    )
    .map(({ code }) => code);
}
