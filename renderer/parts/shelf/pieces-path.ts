import type { PieceDot } from './piece-dots.ts';

function short(value: number): string {
  return String(Math.round(value * 100) / 100);
}

/** Pieces as one path of circles: many small elements would make a full shelf slow to draw again. */
export function piecesPath(dots: readonly PieceDot[]): string {
  return dots
    .map(({ x, y, r }) => {
      const [radius, across] = [short(r), short(2 * r)];
      return `M${short(x - r)} ${short(y)}a${radius} ${radius} 0 1 0 ${across} 0a${radius} ${radius} 0 1 0 -${across} 0`;
    })
    .join('');
}
