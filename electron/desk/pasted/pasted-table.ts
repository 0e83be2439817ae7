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

/** A JSON list of records as a table; null when it is none. */
function jsonTable(text: string): PastedTable | null {
  if (!text.trimStart().startsWith('[')) return null;
  let list: unknown;
  try {
    list = JSON.parse(text);
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

/** Reads CSV, TSV, semicolons, bars, a range pasted from a spreadsheet, or a JSON list of records; a byte order mark is passed over. */
export function pastedTable(given: string): PastedTable {
  const text = given.startsWith('\uFEFF') ? given.slice(1) : given;
  const json = jsonTable(text);
  if (json !== null) return json;
  const parsed = Papa.parse<string[]>(text, { delimitersToGuess: [',', '\t', ';', '|'], skipEmptyLines: false });
  const [header = [], ...rows] = parsed.data;
  const unclosed = parsed.errors.filter(({ type }) => type === 'Quotes').map(({ row = 0 }) => row + 1);
  return { header, rows, unclosed: [...new Set(unclosed)] };
}
