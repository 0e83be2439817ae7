// Where the cursor goes in a sheet: samples one way, attributes the other, and a remark at each sample's end.

export interface GridPlace {
  readonly sample: number;
  /** Place among the attributes; their count is the remark. */
  readonly attribute: number;
}

export interface GridSize {
  readonly samples: number;
  readonly attributes: number;
  /** A narrow sheet stands a sample's attributes below each other. */
  readonly isTall: boolean;
  readonly hasRemarks: boolean;
}

export type GridMove = GridPlace | 'stay' | 'end';

function within(value: number, most: number): number {
  return Math.min(Math.max(value, 0), most);
}

function onward({ sample, attribute }: GridPlace, size: GridSize, last: number): GridMove {
  if (attribute < last) return { sample, attribute: attribute + 1 };
  return sample + 1 < size.samples ? { sample: sample + 1, attribute: 0 } : 'end';
}

function backward({ sample, attribute }: GridPlace, last: number): GridMove {
  if (attribute > 0) return { sample, attribute: attribute - 1 };
  return sample > 0 ? { sample: sample - 1, attribute: last } : 'stay';
}

/**
 * The move that a key makes.
 *
 * Enter goes through a sample's attributes and on to the next sample; after the last one it leaves the sheet. Arrows go where they
 * point. In a tall sheet, down and up go through everything, left and right from sample to sample.
 *
 * @returns null when the key is no move
 * @example gridMove({ sample: 0, attribute: 5 }, 'Enter', { samples: 4, attributes: 6, isTall: false, hasRemarks: true }) // { sample: 1, attribute: 0 }
 */
export function gridMove(place: GridPlace, key: string, size: GridSize): GridMove | null {
  const lastScore = size.attributes - 1;
  const last = size.hasRemarks ? size.attributes : lastScore;
  const across = (by: number): GridMove => ({
    sample: within(place.sample + by, size.samples - 1),
    attribute: place.attribute,
  });
  const along = (by: number): GridMove => ({ sample: place.sample, attribute: within(place.attribute + by, last) });
  switch (key) {
    case 'Enter':
      return onward(place, size, lastScore);
    case 'ArrowRight':
      return size.isTall ? across(1) : along(1);
    case 'ArrowLeft':
      return size.isTall ? across(-1) : along(-1);
    case 'ArrowDown':
      if (!size.isTall) return across(1);
      return onward(place, size, last) === 'end' ? 'stay' : onward(place, size, last);
    case 'ArrowUp':
      return size.isTall ? backward(place, last) : across(-1);
    case 'Home':
      return { sample: place.sample, attribute: 0 };
    case 'End':
      return { sample: place.sample, attribute: lastScore };
    default:
      return null;
  }
}
