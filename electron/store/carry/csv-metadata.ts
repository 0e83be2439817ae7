import type { Reader } from '../reader.ts';
import { columnNames, type TableName, tables } from '../tables.ts';
import { columnWords } from './column-words-table.ts';

function datatype(table: TableName, column: string): string {
  if (column === 'revision' || column === 'is_sample') return 'integer';
  const kinds: Readonly<Record<string, string>> = tables[table].columns;
  const kind = kinds[column] ?? 'text';
  if (kind === 'flag') return 'integer';
  if (kind.startsWith('number')) return 'number';
  return column.endsWith('_at') || column.startsWith('planned_') ? 'dateTime' : 'string';
}

function isRequired(table: TableName, column: string): boolean {
  const kinds: Readonly<Record<string, string>> = tables[table].columns;
  return !(kinds[column] ?? 'text').endsWith('?');
}

/** The keys of a table to those that are written too: each resource of a key must be a table of the same group. */
function referencesOf(read: Reader, table: TableName, written: readonly TableName[]) {
  return read
    .all<{ table: string; from: string }>(
      `SELECT "table", "from" FROM pragma_foreign_key_list('${table}') ORDER BY id DESC`,
    )
    .filter((key) => written.some((name) => name === key.table))
    .map((key) => ({
      columnReference: key.from,
      reference: { resource: `${key.table}.csv`, columnReference: 'id' },
    }));
}

/**
 * A description of every column of an export.
 *
 * Source: W3C Recommendation "Metadata Vocabulary for Tabular Data", 17 December 2015 (CSV on the Web).
 */
export function csvMetadata(read: Reader, kitchen: string, written: readonly TableName[]): object {
  return {
    '@context': ['http://www.w3.org/ns/csvw', { '@language': 'en' }],
    'dc:title': kitchen,
    'dc:description':
      'Every row of a kitchen, one file a table. Cells that a spreadsheet would take for a formula are led by an apostrophe.',
    dialect: { encoding: 'utf-8', delimiter: ',', header: true, lineTerminators: ['\r\n'], quoteChar: '"' },
    tables: written.map((table) => ({
      url: `${table}.csv`,
      tableSchema: {
        columns: columnNames(table).map((column) => ({
          name: column,
          titles: column,
          'dc:description': columnWords(table, column) ?? column,
          datatype: datatype(table, column),
          required: isRequired(table, column),
        })),
        primaryKey: 'id',
        foreignKeys: referencesOf(read, table, written),
      },
    })),
  };
}
