import { describe, expect, it } from 'vitest';
import { type GridPlace, gridMove } from '#renderer/pages/tasting/grid-moves.ts';

const wide = { samples: 4, attributes: 6, isTall: false, hasRemarks: true };
const tall = { ...wide, isTall: true };
const at = (sample: number, attribute: number): GridPlace => ({ sample, attribute });

describe('gridMove', () => {
  it('goes through four samples of six attributes with 24 Enters, each cell once, and then leaves', () => {
    const seen = new Set<string>();
    let place = at(0, 0);
    let moves = 0;
    for (;;) {
      seen.add(`${place.sample}/${place.attribute}`);
      const move = gridMove(place, 'Enter', wide);
      moves += 1;
      if (move === 'end') break;
      if (move === null || move === 'stay') throw new Error('Enter must go on');
      place = move;
    }
    expect(moves).toBe(24);
    expect(seen.size).toBe(24);
  });

  it('moves as the arrows point, and stops at the edges', () => {
    expect(gridMove(at(1, 2), 'ArrowRight', wide)).toEqual(at(1, 3));
    expect(gridMove(at(1, 2), 'ArrowLeft', wide)).toEqual(at(1, 1));
    expect(gridMove(at(1, 2), 'ArrowDown', wide)).toEqual(at(2, 2));
    expect(gridMove(at(1, 2), 'ArrowUp', wide)).toEqual(at(0, 2));
    expect(gridMove(at(0, 0), 'ArrowLeft', wide)).toEqual(at(0, 0));
    expect(gridMove(at(3, 5), 'ArrowDown', wide)).toEqual(at(3, 5));
  });

  it('reaches the remark to the right of the last attribute, and goes on from it with Enter', () => {
    expect(gridMove(at(1, 5), 'ArrowRight', wide)).toEqual(at(1, 6));
    expect(gridMove(at(1, 5), 'ArrowRight', { ...wide, hasRemarks: false })).toEqual(at(1, 5));
    expect(gridMove(at(1, 6), 'Enter', wide)).toEqual(at(2, 0));
    expect(gridMove(at(3, 6), 'Enter', wide)).toBe('end');
  });

  it('in a tall sheet goes down and up through everything, left and right from sample to sample', () => {
    expect(gridMove(at(0, 0), 'ArrowDown', tall)).toEqual(at(0, 1));
    expect(gridMove(at(0, 6), 'ArrowDown', tall)).toEqual(at(1, 0));
    expect(gridMove(at(3, 6), 'ArrowDown', tall)).toBe('stay');
    expect(gridMove(at(1, 0), 'ArrowUp', tall)).toEqual(at(0, 6));
    expect(gridMove(at(0, 0), 'ArrowUp', tall)).toBe('stay');
    expect(gridMove(at(1, 2), 'ArrowRight', tall)).toEqual(at(2, 2));
  });

  it('leaves other keys alone', () => {
    expect(gridMove(at(0, 0), '5', wide)).toBeNull();
    expect(gridMove(at(0, 0), 'Tab', wide)).toBeNull();
  });
});
