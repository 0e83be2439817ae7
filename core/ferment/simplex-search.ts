/**
 * The point where a function of a few variables is lowest, near a starting point.
 *
 * Method: the downhill simplex of Nelder and Mead, restarted once from where it ends. Finds a local minimum; callers start it from several
 * places.
 *
 * @param height the function; +∞ where it is not defined
 * @param start one number per variable, one to three variables
 * @param step first step along each variable, not 0
 * @returns the point and its height
 * Accuracy: the height to about 1e-12 of itself for smooth functions.
 * Source: Nelder and Mead (1965), Computer Journal 7, 308.
 */
export function simplexSearch(
  height: (point: readonly number[]) => number,
  start: readonly number[],
  step: readonly number[],
): Lowest {
  const first = descend(height, start, step);
  return descend(
    height,
    first.point,
    step.map((one) => one / 10),
  );
}

export interface Lowest {
  readonly point: readonly number[];
  readonly height: number;
}

function descend(
  height: (point: readonly number[]) => number,
  start: readonly number[],
  step: readonly number[],
): Lowest {
  const at = (point: readonly number[]): Lowest => ({ point, height: height(point) });
  let corners = [
    at(start),
    ...start.map((_, axis) => at(start.map((x, place) => (place === axis ? x + (step[axis] ?? 0) : x)))),
  ];
  for (let turn = 0; turn < 150 * start.length; turn += 1) {
    corners = corners.toSorted((a, b) => a.height - b.height);
    const best = corners[0];
    const worst = corners.at(-1);
    const second = corners.at(-2);
    if (!best || !worst || !second) break;
    if (worst.height - best.height <= 1e-12 * (Math.abs(best.height) + 1e-300)) break;
    const others = corners.slice(0, -1);
    const centre = start.map((_, axis) => others.reduce((sum, one) => sum + (one.point[axis] ?? 0), 0) / others.length);
    const along = (share: number) => at(centre.map((x, axis) => x + share * ((worst.point[axis] ?? 0) - x)));
    const mirrored = along(-1);
    let chosen: Lowest;
    if (mirrored.height < best.height) {
      const further = along(-2);
      chosen = further.height < mirrored.height ? further : mirrored;
    } else if (mirrored.height < second.height) {
      chosen = mirrored;
    } else {
      chosen = along(mirrored.height < worst.height ? -0.5 : 0.5);
    }
    if (chosen.height < worst.height) {
      corners = [...others, chosen];
    } else {
      corners = corners.map((one) =>
        one === best ? one : at(one.point.map((x, axis) => (x + (best.point[axis] ?? 0)) / 2)),
      );
    }
  }
  return corners.reduce((low, one) => (one.height < low.height ? one : low));
}
