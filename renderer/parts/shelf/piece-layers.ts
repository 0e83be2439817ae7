import { type PieceDot, pieceDots } from './piece-dots.ts';

/** All pieces of one ingredient as one path, from the top of their layer down. */
export interface PieceLayer {
  /** Which of the jar's ingredients it stands for. */
  readonly part: number;
  readonly path: string;
}

function short(value: number): string {
  return String(Math.round(value * 100) / 100);
}

function circle({ x, y, r }: PieceDot): string {
  const [radius, across] = [short(r), short(2 * r)];
  return `M${short(x - r)} ${short(y)}a${radius} ${radius} 0 1 0 ${across} 0a${radius} ${radius} 0 1 0 -${across} 0`;
}

/**
 * A layer of pieces as one path for each ingredient: many small elements would make a full shelf slow to draw again.
 *
 * @param shares of each ingredient by mass
 * @param seed the same seed draws the same layer
 */
export function pieceLayers(
  layer: { readonly depth: number; readonly left: number; readonly right: number },
  shares: readonly number[],
  seed: number,
): readonly PieceLayer[] {
  const dots = pieceDots({ top: 0, bottom: layer.depth, left: layer.left, right: layer.right }, shares, seed);
  return [...Map.groupBy(dots, ({ part }) => part)].map(([part, own]) => ({
    part,
    path: own.map(circle).join(''),
  }));
}
