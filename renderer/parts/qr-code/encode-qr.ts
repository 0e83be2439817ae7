import { OutOfDomain } from '#core/out-of-domain.ts';
import { qrBits, qrDataCodewords } from './qr-data.ts';
import { qrMasks, qrPenalty } from './qr-mask.ts';
import { putFormat, type QrGrid, qrPatterns } from './qr-patterns.ts';

/** Two columns at a time from the right, up and down in turn, past the upright timing line. */
function dataPlaces(patterns: QrGrid): [number, number][] {
  const size = patterns.length;
  const places: [number, number][] = [];
  let isUp = true;
  for (let right = size - 1; right > 0; right -= right === 8 ? 3 : 2) {
    for (let step = 0; step < size; step += 1) {
      const row = isUp ? size - 1 - step : step;
      for (const column of [right, right - 1]) if (patterns[row]?.[column] === null) places.push([row, column]);
    }
    isUp = !isUp;
  }
  return places;
}

/**
 * A text as a QR code that still reads with about a seventh of it damaged (level M).
 *
 * Method: one segment of digits, of capitals and digits, or of bytes, whichever is the shortest that takes the whole text; the smallest of
 * versions 1–5; the mask with the lowest penalty. Leaves out larger versions, other levels, mixed segments and letters beyond ASCII.
 *
 * @param text 1–84 characters of ASCII (digits and capitals take less room: up to 202 digits)
 * @returns modules row by row, true is dark, without the light margin of four modules
 * @throws OutOfDomain for an empty text, one too long for version 5, or a character beyond ASCII
 * Accuracy: exact. Source: ISO/IEC 18004:2015.
 * @example encodeQr('01234567').length // 21
 */
export function encodeQr(text: string): boolean[][] {
  if (!/^[\x20-\x7e]+$/.test(text)) throw new OutOfDomain('text', text, 'one or more characters of ASCII');
  const encoded = qrDataCodewords(text);
  if (encoded === null) throw new OutOfDomain('text', text, 'what version 5 takes: 84 bytes');
  const stream = qrBits(encoded.data, encoded.version);
  const patterns = qrPatterns(encoded.version);
  const places = dataPlaces(patterns);
  const masked = qrMasks.map((isTurned, mask) => {
    const grid = patterns.map((row) => [...row]);
    for (const [index, [row, column]] of places.entries()) {
      const line = grid[row];
      if (line !== undefined) line[column] = (stream[index] === 1) !== isTurned(row, column);
    }
    putFormat(grid, mask);
    return grid.map((row) => row.map((isDark) => isDark === true));
  });
  const penalties = masked.map(qrPenalty);
  return masked[penalties.indexOf(Math.min(...penalties))] ?? [];
}
