import { describe, expect, it } from 'vitest';
import { pieceLayers } from '#renderer/parts/shelf/piece-layers.ts';

const layer = { depth: 20, left: 3, right: 73 };

describe('pieceLayers(layer, shares, seed)', () => {
  it('draws one path for each ingredient, the same for the same jar', () => {
    const two = pieceLayers(layer, [50, 50], 7);
    expect(two.map(({ part }) => part).toSorted()).toEqual([0, 1]);
    expect(pieceLayers(layer, [50, 50], 7)).toEqual(two);
    expect(pieceLayers(layer, [50, 50], 8)[0]?.path).not.toBe(two[0]?.path);
  });
  it('draws more pieces in a deeper layer, none without depth or mass', () => {
    const pieces = (depth: number) => pieceLayers({ ...layer, depth }, [50], 7)[0]?.path.split('M').length ?? 0;
    expect(pieces(40)).toBeGreaterThan(pieces(20));
    expect(pieceLayers({ ...layer, depth: 0 }, [50], 7)).toEqual([]);
    expect(pieceLayers(layer, [], 7)).toEqual([]);
  });
});
