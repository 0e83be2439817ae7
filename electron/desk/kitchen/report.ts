import { version } from '#shared/version.ts';
import { tableNames } from '#store/tables.ts';
import type { Handlers } from '../handler.ts';
import { lastMistakes } from '../mistake-log.ts';

const linesTold = 200;

export const reportHandlers: Handlers<'report:read'> = {
  'report:read'(kitchen) {
    const sqlite = kitchen.read.one<{ version: string }>('SELECT sqlite_version() AS version')?.version ?? '';
    const schema = String(kitchen.db.pragma('user_version', { simple: true }));
    const counts = tableNames.map((table) => {
      const n = kitchen.read.one<{ n: number }>(`SELECT count(*) AS n FROM ${table}`)?.n ?? 0;
      return `${table} ${n}`;
    });
    const log = lastMistakes(linesTold);
    return {
      text: [
        `Sidejar ${version}, schema ${schema}`,
        `${process.platform} ${process.arch}, Node ${process.versions.node}, SQLite ${sqlite}`,
        `Rows: ${counts.join(', ')}`,
        '',
        log === '' ? 'No mistake of the program has been noted.' : log,
        '',
      ].join('\n'),
    };
  },
};
