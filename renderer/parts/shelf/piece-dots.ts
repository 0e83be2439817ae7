/** A piece of fruit in the drawing. */
export interface PieceDot {
  readonly x: number;
  readonly y: number;
  readonly r: number;
  /** Which of the jar's ingredients it stands for. */
  readonly part: number;
}

/** A small repeatable sequence in 0–1, so that a jar looks the same each time it is drawn. */
function sequence(seed: number): () => number {
  let state = (seed * 2_654_435_761) >>> 0 || 1;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 4_294_967_296;
  };
}

/**
 * Scatters pieces through a layer.
 *
 * @param shares of each ingredient by mass; pieces are dealt in that proportion
 * @param seed the same seed draws the same jar
 */
export function pieceDots(
  layer: { readonly top: number; readonly bottom: number; readonly left: number; readonly right: number },
  shares: readonly number[],
  seed: number,
): PieceDot[] {
  const depth = layer.bottom - layer.top;
  const total = shares.reduce((sum, share) => sum + share, 0);
  if (!(depth > 0) || !(total > 0)) return [];
  const next = sequence(seed);
  const r = Math.min(5, Math.max(1.6, depth / 2));
  const columns = Math.max(1, Math.floor((layer.right - layer.left) / (r * 2.3)));
  const rows = Math.max(1, Math.floor(depth / (r * 2)));
  const dots: PieceDot[] = [];
  for (let place = 0; place < columns * rows; place += 1) {
    const [column, row] = [place % columns, Math.floor(place / columns)];
    let rest = next() * total;
    const part = shares.findIndex((share) => {
      rest -= share;
      return rest < 0;
    });
    dots.push({
      x: layer.left + ((column + 0.5 + (next() - 0.5) * 0.5) * (layer.right - layer.left)) / columns,
      y: layer.top + ((row + 0.5 + (next() - 0.5) * 0.4) * depth) / rows,
      r: r * (0.8 + next() * 0.35),
      part: Math.max(0, part),
    });
  }
  return dots;
}
