import Papa from 'papaparse';

/** A table as cells: its heading row, the others, and near which rows a quotation mark stays open. */
export interface PastedTable {
  readonly header: string[];
  readonly rows: string[][];
  readonly unclosed: number[];
}

function cellText(value: unknown): string {
  if (value === null || value === undefined) return '';
  return typeof value === 'object' ? JSON.stringify(value) : String(value);
}

/** The one list in an object of JSON, or the object as the only record. */
function listIn(value: unknown): unknown {
  if (Array.isArray(value) || typeof value !== 'object' || value === null) return value;
  const lists = Object.values(value).filter(Array.isArray);
  return lists.length === 1 ? lists[0] : [value];
}

/** A JSON list of records as a table, also within an object or one record alone; null when it is none. */
function jsonTable(text: string): PastedTable | null {
  if (!/^\s*[[{]/.test(text)) return null;
  let list: unknown;
  try {
    list = listIn(JSON.parse(text));
  } catch {
    return null;
  }
  if (
    !Array.isArray(list) ||
    !list.every((each) => typeof each === 'object' && each !== null && !Array.isArray(each))
  ) {
    return null;
  }
  const header = [...new Set(list.flatMap((record: object) => Object.keys(record)))];
  const rows = list.map((record: Record<string, unknown>) =>
    header.map((column) => (Object.hasOwn(record, column) ? cellText(record[column]) : '')),
  );
  return { header, rows, unclosed: [] };
}

/** Some spreadsheets say in a line of its own, before the first row, what stands between the cells. */
const separatorLine = /^sep=(.)\r?\n/i;

/** Reads CSV, TSV, semicolons, bars, a range pasted from a spreadsheet, or a JSON list of records; a byte order mark is passed over. */
export function pastedTable(given: string): PastedTable {
  const text = given.startsWith('\uFEFF') ? given.slice(1) : given;
  const json = jsonTable(text);
  if (json !== null) return json;
  const said = separatorLine.exec(text);
  const parsed = Papa.parse<string[]>(text.slice(said?.[0].length ?? 0), {
    delimiter: said?.[1] ?? '',
    delimitersToGuess: [',', '\t', ';', '|'],
    skipEmptyLines: false,
  });
  const [header = [], ...rows] = parsed.data;
  const unclosed = parsed.errors.filter(({ type }) => type === 'Quotes').map(({ row = 0 }) => row + 1);
  return { header, rows, unclosed: [...new Set(unclosed)] };
}
