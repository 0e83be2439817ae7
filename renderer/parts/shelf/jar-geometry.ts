import type { VesselKind } from '#core/trial/formula.ts';
import { heightOfShare, radiusAt, type VesselProfile, vesselProfile } from './vessel-profile.ts';

/** The drawing of one vessel, in a box of `width` × `height`; y grows downwards. */
export interface JarGeometry {
  readonly width: number;
  readonly height: number;
  readonly outline: string;
  /** Where the drink stands; at the bottom when the jar is empty. */
  readonly liquidTop: number;
  /** The layer of pieces floats from the top of the drink down to here. */
  readonly piecesBottom: number;
  /** Where the neck begins: the label is stuck below it. */
  readonly shoulder: number;
  readonly neckWidth: number;
  /** Contents over capacity; above 1 the jar would run over. */
  readonly fillFraction: number;
}

export interface JarMeasure {
  readonly kind: VesselKind;
  readonly capacity_mL: number;
  readonly volume_mL: number;
  readonly pieces_mL: number;
}

function number(value: number): string {
  return String(Math.round(value * 100) / 100);
}

/** The body between two heights, as a closed path that follows the glass. */
function bodyPath(profile: VesselProfile, from: number, to: number, width: number, height: number): string {
  if (!(to > from)) return '';
  const between = profile.points.filter((point) => point.height > from && point.height < to);
  const edge = [
    { height: from, radius: radiusAt(profile, from) },
    ...between,
    { height: to, radius: radiusAt(profile, to) },
  ].map(({ height: at, radius }) => ({ y: height * (1 - at), half: (radius * width) / 2 }));
  const right = edge.map(({ y, half }) => `${number(width / 2 + half)} ${number(y)}`);
  const left = edge.toReversed().map(({ y, half }) => `${number(width / 2 - half)} ${number(y)}`);
  return `M${[...right, ...left].join('L')}Z`;
}

/**
 * Draws a vessel from its own numbers: its kind, what it could hold, and what it does hold.
 *
 * Method: a solid of revolution; volumes are turned into heights by its profile. Pieces float, packed at about half of their layer.
 *
 * @param width of the drawing, in its own units
 */
export function jarGeometry(measure: JarMeasure, width: number): JarGeometry {
  const { kind, capacity_mL, volume_mL, pieces_mL } = measure;
  const key = [kind, capacity_mL, volume_mL, pieces_mL, width].join(' ');
  const known = kept.get(key) ?? drawnGeometry(measure, width);
  if (kept.size >= mostKept) kept.clear();
  kept.set(key, known);
  return known;
}

/** Jars of one level are filled alike: each is worked out once. */
const kept = new Map<string, JarGeometry>();
const mostKept = 200;

function drawnGeometry({ kind, capacity_mL, volume_mL, pieces_mL }: JarMeasure, width: number): JarGeometry {
  const profile = vesselProfile(kind);
  const height = width * profile.tallness;
  const fillFraction = volume_mL / capacity_mL;
  const top = heightOfShare(profile, fillFraction);
  // Loosely packed pieces leave as much room between them as they take (drawing only).
  const layer_mL = Math.min(volume_mL, pieces_mL * 2);
  const bottom =
    pieces_mL > 0 ? heightOfShare(profile, (Math.min(volume_mL, capacity_mL) - layer_mL) / capacity_mL) : top;
  return {
    width,
    height,
    outline: bodyPath(profile, 0, 1, width, height),
    liquidTop: height * (1 - top),
    piecesBottom: height * (1 - bottom),
    shoulder: height * (1 - profile.shoulder),
    neckWidth: radiusAt(profile, 1) * width,
    fillFraction,
  };
}
