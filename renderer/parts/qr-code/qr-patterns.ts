import type { QrVersion } from './qr-version-table.ts';

/** A square of modules, row by row; true is dark, null not yet drawn. */
export type QrGrid = (boolean | null)[][];

function put(grid: QrGrid, row: number, column: number, isDark: boolean): void {
  const line = grid[row];
  if (line !== undefined && column >= 0 && column < line.length) line[column] = isDark;
}

/** Rings about a middle: dark, light, dark, … from the outside as far as the radius says. */
function rings(grid: QrGrid, row: number, column: number, radius: number, isDark: (ring: number) => boolean): void {
  for (let down = -radius; down <= radius; down += 1) {
    for (let right = -radius; right <= radius; right += 1) {
      put(grid, row + down, column + right, isDark(Math.max(Math.abs(down), Math.abs(right))));
    }
  }
}

/** The finders with their separators, the alignment pattern and the timing lines; room for the format is kept light. */
export function qrPatterns({ size, alignment }: QrVersion): QrGrid {
  const grid: QrGrid = Array.from({ length: size }, () => new Array<boolean | null>(size).fill(null));
  for (let place = 0; place < size; place += 1) {
    put(grid, 6, place, place % 2 === 0);
    put(grid, place, 6, place % 2 === 0);
  }
  const finder = (ring: number) => ring !== 2 && ring !== 4;
  rings(grid, 3, 3, 4, finder);
  rings(grid, 3, size - 4, 4, finder);
  rings(grid, size - 4, 3, 4, finder);
  if (alignment !== null) rings(grid, alignment, alignment, 2, (ring) => ring !== 1);
  putFormat(grid, 0);
  return grid;
}

/** The fifteen bits of level M (00) and the mask, with their own correction (generator 10100110111), masked with 101010000010010. */
export function formatBits(mask: number): number {
  let remainder = mask;
  for (let step = 0; step < 10; step += 1) remainder = (remainder << 1) ^ ((remainder >> 9) * 0x537);
  return ((mask << 10) | remainder) ^ 0x5412;
}

/** Writes the format twice, and the one module that is always dark. */
export function putFormat(grid: QrGrid, mask: number): void {
  const size = grid.length;
  const format = formatBits(mask);
  const isDark = (bit: number) => ((format >> bit) & 1) === 1;
  for (let bit = 0; bit < 15; bit += 1) {
    // Around the upper left finder, past the timing lines.
    if (bit < 6) put(grid, bit, 8, isDark(bit));
    else if (bit < 8) put(grid, bit + 1, 8, isDark(bit));
    else put(grid, 8, bit === 8 ? 7 : 14 - bit, isDark(bit));
    // Below the upper right finder, and beside the lower left one.
    if (bit < 8) put(grid, 8, size - 1 - bit, isDark(bit));
    else put(grid, size - 15 + bit, 8, isDark(bit));
  }
  put(grid, size - 8, 8, true);
}
