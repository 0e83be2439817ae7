export type CsvCell = string | number | null;

/** What a spreadsheet would take for the beginning of a formula, spaces before it or not. */
const runs = /^\s*[=+\-@\t\r＝＋－＠]/;

/** Words that a spreadsheet would run are led by an apostrophe, which makes them words again. */
export function harmlessCell(words: string): string {
  return runs.test(words) ? `'${words}` : words;
}

function cellText(cell: CsvCell): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return Number.isFinite(cell) ? String(Number(cell.toPrecision(10))) : '';
  const words = harmlessCell(cell);
  return /[",\r\n;]/.test(words) ? `"${words.replaceAll('"', '""')}"` : words;
}

/**
 * Rows as CSV after RFC 4180: commas, quotes where needed, CRLF. What is unknown is an empty cell; numbers stay numbers; words never run.
 *
 * @example csvText([['who', 'score'], ['=A1', 4.5]]) // "who,score\r\n'=A1,4.5\r\n"
 */
export function csvText(rows: readonly (readonly CsvCell[])[]): string {
  return rows.map((row) => `${row.map(cellText).join(',')}\r\n`).join('');
}
