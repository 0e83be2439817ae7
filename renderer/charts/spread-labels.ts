/** A label that wants to stand at a height. */
export interface WantedLabel {
  readonly key: string;
  readonly x: number;
  readonly y: number;
}

/**
 * Moves labels apart that would stand on each other: each at least `line` below the one above it, as near as can be to where it belongs.
 *
 * @param room heights between which they have to stay
 * @returns heights by key; null when they don't fit
 */
export function spreadLabels(
  labels: readonly WantedLabel[],
  line: number,
  room: readonly [number, number],
): ReadonlyMap<string, number> | null {
  const [top, bottom] = room;
  if (labels.length * line > bottom - top + line) return null;
  const inOrder = labels.toSorted((a, b) => a.y - b.y);
  const places: number[] = [];
  for (const { y } of inOrder) places.push(Math.max(y, (places.at(-1) ?? Number.NEGATIVE_INFINITY) + line, top));
  let below = bottom;
  for (let place = places.length - 1; place >= 0; place -= 1) {
    places[place] = Math.min(places[place] ?? below, below);
    below = (places[place] ?? below) - line;
  }
  return new Map(inOrder.map(({ key }, place) => [key, places[place] ?? 0]));
}
