import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';
import type { Step } from '#store/log/change-log.ts';
import { rowHistory } from '#store/log/row-history.ts';
import { aboutRow, rowParts } from '#store/log/row-parts.ts';
import { stepRows } from '#store/log/step-rows.ts';
import type { Handlers } from '../handler.ts';

export const historyHandlers: Handlers<
  'history:read' | 'history:step' | 'history:row' | 'history:about' | 'history:parts'
> = {
  'history:read': (kitchen, { limit, before }) => ({
    steps: kitchen.read.all(
      `SELECT s.id AS step, s.at, s.request, s.summary, s.kind, count(c.id) AS rows
       FROM steps AS s LEFT JOIN changes AS c ON c.step_id = s.id
       WHERE s.id < ? GROUP BY s.id ORDER BY s.id DESC LIMIT ?`,
      before ?? Number.MAX_SAFE_INTEGER,
      limit,
    ),
  }),
  'history:step'(kitchen, { step, limit, after }) {
    const row = kitchen.read.one<Step>('SELECT * FROM steps WHERE id = ?', step);
    if (row === undefined) throw new Failure('not-found', phrase`No such step stands in this kitchen’s log.`, ['step']);
    const { at, request, summary, kind } = row;
    const total = kitchen.read.one<{ n: number }>('SELECT count(*) AS n FROM changes WHERE step_id = ?', step)?.n ?? 0;
    return { step, at, request, summary, kind, total, ...stepRows(kitchen.read, step, after, limit) };
  },
  'history:row': (kitchen, { table, id, limit }) => ({ entries: rowHistory(kitchen.read, table, id, limit) }),
  'history:about': (kitchen, { table, id }) => aboutRow(kitchen.read, table, id),
  'history:parts': (kitchen, { table, id, part, limit, after }) =>
    rowParts(kitchen.read, { table, id, part }, { limit, after }),
};
