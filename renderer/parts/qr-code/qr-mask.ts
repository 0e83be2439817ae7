/** The eight masks: where one holds, a module of data is turned over. Source: ISO/IEC 18004:2015, table 10, from memory. */
export const qrMasks: readonly ((row: number, column: number) => boolean)[] = [
  (row, column) => (row + column) % 2 === 0,
  (row) => row % 2 === 0,
  (_, column) => column % 3 === 0,
  (row, column) => (row + column) % 3 === 0,
  (row, column) => (Math.floor(row / 2) + Math.floor(column / 3)) % 2 === 0,
  (row, column) => ((row * column) % 2) + ((row * column) % 3) === 0,
  (row, column) => (((row * column) % 2) + ((row * column) % 3)) % 2 === 0,
  (row, column) => (((row + column) % 2) + ((row * column) % 3)) % 2 === 0,
];

type Modules = readonly (readonly boolean[])[];

/** Runs of five and more, and what looks like a finder with four light modules beside it. */
function linePenalty(line: readonly boolean[]): number {
  const text = line.map((isDark) => (isDark ? '1' : '0')).join('');
  let penalty = 0;
  for (const run of text.match(/0{5,}|1{5,}/g) ?? []) penalty += run.length - 2;
  for (let place = 0; place + 11 <= text.length; place += 1) {
    const part = text.slice(place, place + 11);
    if (part === '10111010000' || part === '00001011101') penalty += 40;
  }
  return penalty;
}

/**
 * How hard a code is to read: the lowest wins.
 *
 * Source: ISO/IEC 18004:2015, 7.8.3 (weights 3, 3, 40 and 10), from memory.
 */
export function qrPenalty(modules: Modules): number {
  const size = modules.length;
  const columns = modules.map((_, column) => modules.map((row) => row[column] ?? false));
  let penalty = [...modules, ...columns].reduce((sum, line) => sum + linePenalty(line), 0);
  for (let row = 0; row + 1 < size; row += 1) {
    for (let column = 0; column + 1 < size; column += 1) {
      const corner = modules[row]?.[column];
      const isBlock =
        corner === modules[row]?.[column + 1] &&
        corner === modules[row + 1]?.[column] &&
        corner === modules[row + 1]?.[column + 1];
      if (isBlock) penalty += 3;
    }
  }
  const dark = modules.flat().filter(Boolean).length;
  return penalty + 10 * Math.floor((Math.abs(dark * 2 - size * size) * 10) / (size * size));
}
