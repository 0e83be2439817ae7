import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { type Row, type TableName, tableNames } from '#store/tables.ts';
import type { Handlers } from '../handler.ts';
import { fillWithSample } from '../sample-kitchen/fill-with-sample.ts';

function kitchenRow(kitchen: Kitchen): Row<'kitchens'> {
  const row = kitchen.read.one<Row<'kitchens'>>('SELECT * FROM kitchens ORDER BY id LIMIT 1');
  if (row === undefined) throw new Failure('store-damaged', phrase`This kitchen has lost its name; restore a backup.`);
  return row;
}

const filled = tableNames.filter((table) => table !== 'kitchens' && table !== 'erasures');

/** How many rows each table has, and how many of them are the sample's. */
function countsOf(kitchen: Kitchen): Map<TableName, { total: number; of_sample: number }> {
  const kept = kitchen.read.all<{ table_name: string; total: number; of_sample: number }>('SELECT * FROM row_counts');
  const byTable = new Map(kept.map((row) => [row.table_name, row]));
  return new Map(
    filled.map((table) => {
      const counted =
        byTable.get(table) ??
        kitchen.read.one<{ total: number; of_sample: number }>(
          `SELECT count(*) AS total, coalesce(sum(is_sample), 0) AS of_sample FROM ${table}`,
        );
      return [table, { total: counted?.total ?? 0, of_sample: counted?.of_sample ?? 0 }];
    }),
  );
}

function sampleRows(kitchen: Kitchen): { table: TableName; id: string }[] {
  return filled.flatMap((table) =>
    kitchen.read.all<{ id: string }>(`SELECT id FROM ${table} WHERE is_sample = 1`).map(({ id }) => ({ table, id })),
  );
}

export const kitchenHandlers: Handlers<'kitchen:open' | 'kitchen:change' | 'kitchen:sample' | 'kitchen:removeSample'> =
  {
    'kitchen:open'(kitchen) {
      const row = kitchenRow(kitchen);
      const counts = countsOf(kitchen);
      return {
        name: row.name,
        measures: row.measures as 'metric' | 'us',
        currency: row.currency,
        file: kitchen.file,
        readOnly: kitchen.readOnly,
        sampleRows: [...counts.values()].reduce((sum, { of_sample }) => sum + of_sample, 0),
        counts: Object.fromEntries([...counts].map(([table, { total }]) => [table, total])),
      };
    },
    'kitchen:change'(kitchen, input) {
      const { id } = kitchenRow(kitchen);
      const { name, measures, currency } = input;
      // Only what was given: the rest may have been changed in another window meanwhile.
      const values = {
        ...(name === undefined ? {} : { name }),
        ...(measures === undefined ? {} : { measures }),
        ...(currency === undefined ? {} : { currency }),
      };
      const summary = phrase`Change the kitchen’s name, measures or currency`;
      const row = kitchen.write({ request: 'kitchen:change', summary }, (writer) =>
        writer.update('kitchens', id, values),
      );
      return { name: row.name, measures: row.measures as 'metric' | 'us', currency: row.currency };
    },
    'kitchen:sample'(kitchen, _input, watch) {
      if ([...countsOf(kitchen).values()].some(({ total }) => total > 0)) {
        throw new Failure(
          'refused',
          phrase`The sample kitchen fills an empty kitchen only; this one holds something already.`,
        );
      }
      return { rows: fillWithSample(kitchen, watch) };
    },
    'kitchen:removeSample'(kitchen) {
      const rows = sampleRows(kitchen);
      if (rows.length === 0) throw new Failure('not-found', phrase`There is nothing of the sample kitchen left here.`);
      return kitchen.write(
        { request: 'kitchen:removeSample', summary: phrase`Remove the sample kitchen` },
        (writer) => {
          for (const { table, id } of rows) writer.remove(table, id);
          return { rows: rows.length };
        },
      );
    },
  };
