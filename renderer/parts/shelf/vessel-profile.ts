import type { VesselKind } from '#core/trial/formula.ts';

/** One height of a vessel and how wide it is there, both as shares: 0–1 of the height from the bottom, 0–1 of the widest radius. */
export interface ProfilePoint {
  readonly height: number;
  readonly radius: number;
}

/** The inside of a vessel from the bottom up, to where it counts as full. */
export interface VesselProfile {
  readonly points: readonly ProfilePoint[];
  /** Height over greatest width. */
  readonly tallness: number;
  /** Where the straight body ends. */
  readonly shoulder: number;
}

const jar: VesselProfile = {
  tallness: 1.45,
  shoulder: 0.74,
  points: [
    { height: 0, radius: 0.86 },
    { height: 0.015, radius: 0.94 },
    { height: 0.04, radius: 0.985 },
    { height: 0.07, radius: 1 },
    { height: 0.74, radius: 1 },
    { height: 0.79, radius: 0.97 },
    { height: 0.83, radius: 0.91 },
    { height: 0.86, radius: 0.84 },
    { height: 0.89, radius: 0.8 },
    { height: 0.92, radius: 0.79 },
    { height: 1, radius: 0.79 },
  ],
};

const bottle: VesselProfile = {
  tallness: 2.7,
  shoulder: 0.56,
  points: [
    { height: 0, radius: 0.88 },
    { height: 0.02, radius: 0.97 },
    { height: 0.04, radius: 1 },
    { height: 0.56, radius: 1 },
    { height: 0.61, radius: 0.95 },
    { height: 0.66, radius: 0.82 },
    { height: 0.71, radius: 0.62 },
    { height: 0.76, radius: 0.47 },
    { height: 0.81, radius: 0.4 },
    { height: 1, radius: 0.36 },
  ],
};

export function vesselProfile(kind: VesselKind): VesselProfile {
  return kind === 'open-jar' || kind === 'lidded-jar' ? jar : bottle;
}

/** Volume of a slice between two heights, up to the factor π: a truncated cone. */
function sliceVolume(low: ProfilePoint, high: ProfilePoint): number {
  const { radius: a } = low;
  const { radius: b } = high;
  return ((high.height - low.height) * (a * a + a * b + b * b)) / 3;
}

/** How wide the vessel is at a height. */
export function radiusAt({ points }: VesselProfile, height: number): number {
  const above = points.findIndex((point) => point.height >= height);
  const high = points[above === -1 ? points.length - 1 : above];
  const low = points[Math.max(0, (above === -1 ? points.length : above) - 1)];
  if (low === undefined || high === undefined) return 0;
  const span = high.height - low.height;
  const share = span === 0 ? 1 : Math.min(1, (height - low.height) / span);
  return low.radius + (high.radius - low.radius) * share;
}

/** Share of the vessel's volume that lies below a height. */
export function volumeShareBelow(profile: VesselProfile, height: number): number {
  const { points } = profile;
  let whole = 0;
  let below = 0;
  for (const [place, low] of points.entries()) {
    const high = points[place + 1];
    if (high === undefined) break;
    whole += sliceVolume(low, high);
    if (height >= high.height) below += sliceVolume(low, high);
    else if (height > low.height) below += sliceVolume(low, { height, radius: radiusAt(profile, height) });
  }
  return below / whole;
}

/**
 * How high a volume stands in the vessel.
 *
 * Method: the vessel is a solid of revolution made of truncated cones; the height is found by halving.
 *
 * @param share of the vessel's volume, 0–1; more than full stands at the brim
 * @returns share of the height, 0–1
 */
export function heightOfShare(profile: VesselProfile, share: number): number {
  if (!(share > 0)) return 0;
  if (share >= 1) return 1;
  let low = 0;
  let high = 1;
  for (let step = 0; step < 40; step += 1) {
    const middle = (low + high) / 2;
    if (volumeShareBelow(profile, middle) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
