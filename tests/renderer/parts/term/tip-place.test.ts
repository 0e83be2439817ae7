import { describe, expect, it } from 'vitest';
import { tipPlace } from '#renderer/parts/term/tip-place.ts';
import { fc } from '#tests/properties.ts';

const room = { width: 1280, height: 800 };
const tip = { width: 300, height: 40 };

describe('tipPlace(word, tip, room, prefers)', () => {
  it('stands below a word, at its beginning', () => {
    expect(tipPlace({ left: 100, top: 200, bottom: 220 }, tip, room, 'below')).toEqual({ left: 100, top: 224 });
  });

  it('stands above a field, so that what is typed stays seen', () => {
    expect(tipPlace({ left: 100, top: 200, bottom: 270 }, tip, room, 'above')).toEqual({ left: 100, top: 156 });
  });

  it('goes to the other side where there is no room', () => {
    expect(tipPlace({ left: 100, top: 770, bottom: 790 }, tip, room, 'below').top).toBe(726);
    expect(tipPlace({ left: 100, top: 10, bottom: 80 }, tip, room, 'above').top).toBe(84);
  });

  it('never leaves the window that has room for it', () => {
    const inside = fc.record({ left: fc.integer({ min: -50, max: 400 }), top: fc.integer({ min: -20, max: 700 }) });
    fc.assert(
      fc.property(inside, fc.constantFrom('above' as const, 'below' as const), ({ left, top }, prefers) => {
        const narrow = { width: 320, height: 700 };
        const small = { width: 304, height: 60 };
        const at = tipPlace({ left, top, bottom: top + 20 }, small, narrow, prefers);
        expect(at.left).toBeGreaterThanOrEqual(8);
        expect(at.left + small.width).toBeLessThanOrEqual(narrow.width - 8);
        expect(at.top).toBeGreaterThanOrEqual(8);
        expect(at.top + small.height).toBeLessThanOrEqual(narrow.height);
      }),
    );
  });
});
