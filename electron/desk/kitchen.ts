import { Failure } from '#shared/failure.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { type Row, type TableName, tableNames } from '#store/tables.ts';
import type { Handlers } from './handler.ts';
import { fillWithSample } from './sample-kitchen/fill-with-sample.ts';

function kitchenRow(kitchen: Kitchen): Row<'kitchens'> {
  const row = kitchen.read.one<Row<'kitchens'>>('SELECT * FROM kitchens ORDER BY id LIMIT 1');
  if (row === undefined) throw new Failure('store-damaged', 'This kitchen has lost its name; restore a backup.');
  return row;
}

function countOf(kitchen: Kitchen, table: TableName, only = ''): number {
  return kitchen.read.one<{ n: number }>(`SELECT count(*) AS n FROM ${table} ${only}`)?.n ?? 0;
}

const filled = tableNames.filter((table) => table !== 'kitchens');

function sampleRows(kitchen: Kitchen): { table: TableName; id: string }[] {
  return filled.flatMap((table) =>
    kitchen.read.all<{ id: string }>(`SELECT id FROM ${table} WHERE is_sample = 1`).map(({ id }) => ({ table, id })),
  );
}

export const kitchenHandlers: Handlers<'kitchen:open' | 'kitchen:change' | 'kitchen:sample' | 'kitchen:removeSample'> =
  {
    'kitchen:open'(kitchen) {
      const row = kitchenRow(kitchen);
      return {
        name: row.name,
        measures: row.measures as 'metric' | 'us',
        currency: row.currency,
        file: kitchen.file,
        readOnly: kitchen.readOnly,
        sampleRows: filled.reduce((sum, table) => sum + countOf(kitchen, table, 'WHERE is_sample = 1'), 0),
        counts: Object.fromEntries(filled.map((table) => [table, countOf(kitchen, table)])),
      };
    },
    'kitchen:change'(kitchen, input) {
      const before = kitchenRow(kitchen);
      const name = input.name ?? before.name;
      const measures = input.measures ?? (before.measures as 'metric' | 'us');
      const currency = input.currency === undefined ? before.currency : input.currency;
      kitchen.write(
        { request: 'kitchen:change', summary: `Change the kitchen’s name, measures or currency` },
        (writer) => writer.update('kitchens', before.id, { name, measures, currency }),
      );
      return { name, measures, currency };
    },
    'kitchen:sample'(kitchen, _input, watch) {
      if (filled.some((table) => countOf(kitchen, table) > 0)) {
        throw new Failure(
          'refused',
          'The sample kitchen fills an empty kitchen only; this one holds something already.',
        );
      }
      return { rows: fillWithSample(kitchen, watch) };
    },
    'kitchen:removeSample'(kitchen) {
      const rows = sampleRows(kitchen);
      if (rows.length === 0) throw new Failure('not-found', 'There is nothing of the sample kitchen left here.');
      return kitchen.write({ request: 'kitchen:removeSample', summary: 'Remove the sample kitchen' }, (writer) => {
        for (const { table, id } of rows) writer.remove(table, id);
        return { rows: rows.length };
      });
    },
  };
