import { phrase } from '#core/words/phrase.ts';
import { pastedTable } from '../pasted/pasted-table.ts';
import { unnamedColumns } from '../pasted/unnamed-columns.ts';

/** A refused cell or row of a pasted table; `row` counts as a spreadsheet does, the header being row 1. */
export interface RefusedRow {
  readonly row: number;
  readonly column?: string;
  readonly code: string;
  readonly message: string;
}

/** One score as written, not yet matched with the tasting. */
export interface WrittenScore {
  readonly row: number;
  readonly column: string;
  readonly taster: string;
  readonly sample: string;
  readonly attribute: string;
  readonly replicate: string;
  readonly score: string;
}

type Field = 'taster' | 'sample' | 'attribute' | 'score' | 'replicate';

const fieldWords: Readonly<Record<Field, readonly string[]>> = {
  taster: ['taster', 'judge', 'assessor', 'panelist', 'panellist', 'name'],
  sample: ['sample', 'code', 'jar', 'level'],
  attribute: ['attribute'],
  score: ['score', 'value', 'rating'],
  replicate: ['replicate', 'repeat', 'rep'],
};
const fields = Object.keys(fieldWords) as Field[];

function plain(text: string): string {
  return text.normalize('NFC').trim().toLowerCase();
}

/** Which column is what. A mapping may say it either way round: field to column, or column to field (or attribute). */
function columnMeanings(header: readonly string[], mapping: Readonly<Record<string, string>>): string[] {
  const said = new Map<string, string>();
  for (const [left, right] of Object.entries(mapping)) {
    if (fields.includes(plain(left) as Field) && !header.some((column) => plain(column) === plain(left))) {
      said.set(plain(right), plain(left));
    } else {
      said.set(plain(left), right.trim());
    }
  }
  const meanings = header.map((column) => said.get(plain(column)) ?? column.trim());
  // Synonyms count only where nobody has claimed the field, so that an attribute called "value" stays one.
  for (const field of fields) {
    if (meanings.some((meaning) => plain(meaning) === field)) continue;
    if (field === 'score' && !meanings.some((meaning) => plain(meaning) === 'attribute')) continue;
    const position = meanings.findIndex((meaning) => fieldWords[field].includes(plain(meaning)));
    if (position >= 0) meanings[position] = field;
  }
  return meanings.map((meaning) => (fields.includes(plain(meaning) as Field) ? plain(meaning) : meaning));
}

/** What each column of a table is taken for, and how many rows hold anything. */
export function scoreTableColumns(
  table: string,
  mapping: Readonly<Record<string, string>> = {},
): { columns: { head: string; meaning: string }[]; rows: number } {
  const { header, rows } = pastedTable(table);
  const meanings = columnMeanings(header, mapping);
  return {
    columns: header.map((head, position) => ({ head: head.trim(), meaning: meanings[position] ?? '' })),
    rows: rows.filter((cells) => cells.some((cell) => cell.trim() !== '')).length,
  };
}

export interface ReadTable {
  readonly scores: readonly WrittenScore[];
  readonly refused: readonly RefusedRow[];
  /** Header cells that are neither a field nor empty: in a wide table, the attributes. */
  readonly attributeColumns: readonly string[];
}

/**
 * Reads a table of scores: CSV, TSV, semicolons or JSON records, long (taster, sample, attribute, score) or wide (one column an attribute).
 *
 * An empty cell of a wide table is a missed sample and no score; an empty score in a long table is refused by its row.
 */
export function readScoreTable(table: string, mapping: Readonly<Record<string, string>> = {}): ReadTable {
  const { header, rows, unclosed } = pastedTable(table);
  const meanings = columnMeanings(header, mapping);
  const place = (field: Field) => meanings.indexOf(field);
  const missing = (['taster', 'sample'] as const).filter((field) => place(field) < 0);
  if (missing.length > 0) {
    const message = phrase`The first row must name the columns; there is none for ${missing.join(', ')}. Its columns are: ${header.join(', ').slice(0, 200)}.`;
    return { scores: [], refused: [{ row: 1, code: 'no-header', message }], attributeColumns: [] };
  }
  const twin = meanings.findIndex((meaning, at) => fields.includes(meaning as Field) && meanings.indexOf(meaning) < at);
  if (twin >= 0) {
    const message = phrase`Two columns are taken for the ${meanings[twin] ?? ''}: “${header[place(meanings[twin] as Field)] ?? ''}” and column ${twin + 1}, “${header[twin] ?? ''}”. Rename one of them or leave it out.`;
    return {
      scores: [],
      refused: [{ row: 1, column: header[twin] ?? '', code: 'column-twice', message }],
      attributeColumns: [],
    };
  }
  const isLong = place('attribute') >= 0 && place('score') >= 0;
  const isAttribute = (meaning: string) => meaning !== '' && !fields.includes(meaning as Field);
  const isRepeated = (meaning: string, at: number) =>
    meanings.findIndex((earlier) => plain(earlier) === plain(meaning)) < at;
  const attributeColumns = isLong
    ? []
    : meanings.filter((meaning, at) => isAttribute(meaning) && !isRepeated(meaning, at));
  if (!isLong && attributeColumns.length === 0) {
    const message = phrase`The table has no scores: add the columns attribute and score, or one column for each attribute.`;
    return { scores: [], refused: [{ row: 1, code: 'no-header', message }], attributeColumns: [] };
  }
  const refused: RefusedRow[] = [
    ...unnamedColumns({ header, rows }),
    ...unclosed.map((row) => ({
      row,
      code: 'quotes-unclosed',
      message: phrase`A quotation mark near row ${row} is not closed, so the rows after it can’t be told apart. Close or remove it.`,
    })),
  ];
  if (!isLong) {
    meanings.forEach((meaning, at) => {
      if (!isAttribute(meaning) || !isRepeated(meaning, at)) return;
      const lost = rows.filter((cells) => (cells[at] ?? '').trim() !== '').length;
      const message =
        lost === 1
          ? phrase`Column ${at + 1} is taken for ${meaning}, which an earlier column is already. Its one score is left out; rename it, or give each serving a row of its own.`
          : phrase`Column ${at + 1} is taken for ${meaning}, which an earlier column is already. Its ${lost} scores are left out; rename it, or give each serving a row of its own.`;
      refused.push({ row: 1, column: header[at] ?? meaning, code: 'column-twice', message });
    });
  }
  const scores: WrittenScore[] = [];
  rows.forEach((cells, index) => {
    const row = index + 2;
    if (cells.every((cell) => cell.trim() === '')) return;
    if (cells.length > header.length && cells.slice(header.length).some((cell) => cell.trim() !== '')) {
      const message = phrase`Row ${row} has ${cells.length} cells, the header has ${header.length}.`;
      refused.push({ row, code: 'too-many-cells', message });
      return;
    }
    const cell = (position: number) => (position < 0 ? '' : (cells[position] ?? '').trim());
    const common = {
      row,
      taster: cell(place('taster')),
      sample: cell(place('sample')),
      replicate: cell(place('replicate')),
    };
    if (isLong) {
      scores.push({
        ...common,
        column: header[place('score')] ?? 'score',
        attribute: cell(place('attribute')),
        score: cell(place('score')),
      });
      return;
    }
    meanings.forEach((meaning, position) => {
      if (!attributeColumns.includes(meaning) || isRepeated(meaning, position) || cell(position) === '') return;
      scores.push({ ...common, column: header[position] ?? meaning, attribute: meaning, score: cell(position) });
    });
  });
  return { scores, refused, attributeColumns };
}
