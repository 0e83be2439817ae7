export type CsvCell = string | number | null;

/**
 * What a spreadsheet would take for the beginning of a formula. Spaces, characters without a width and quotation marks before it count for
 * nothing: what is pasted loses its quotation marks before it is read.
 */
const runs = /^(?:\s*[\t\r]|[\s\p{Cf}"']*[=+\-@＝＋－＠])/u;

/** Words that a spreadsheet would run are led by an apostrophe, which makes them words again. */
export function harmlessCell(words: string): string {
  return runs.test(words) ? `'${words}` : words;
}

function plainNumber(cell: number | null): string {
  return cell === null || !Number.isFinite(cell) ? '' : String(Number(cell.toPrecision(10)));
}

function cellText(cell: CsvCell): string {
  if (typeof cell !== 'string') return plainNumber(cell);
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

/**
 * Rows as text that is pasted into a spreadsheet: a tab between cells, a line each. Breaks within words become spaces; words never run.
 *
 * @example tabbedText([['who', 'score'], ['=A1', -4.5]]) // "who\tscore\n'=A1\t-4.5"
 */
export function tabbedText(rows: readonly (readonly CsvCell[])[]): string {
  const text = (cell: CsvCell) =>
    typeof cell === 'string' ? harmlessCell(cell.replaceAll(/\s+/g, ' ')) : plainNumber(cell);
  return rows.map((row) => row.map(text).join('\t')).join('\n');
}
