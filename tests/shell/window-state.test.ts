import { EventEmitter } from 'node:events';
import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserWindow, Rectangle } from 'electron';
import { describe, expect, test } from 'vitest';
import { windowMemory } from '#shell/window-memory.ts';
import { placedWindow, readWindowState, smallestWindow } from '#shell/window-state.ts';
import { fc } from '#tests/properties.ts';

const laptop: Rectangle = { x: 0, y: 25, width: 1440, height: 875 };
const wall: Rectangle = { x: 1440, y: 0, width: 2560, height: 1440 };
const state = { x: 100, y: 80, width: 1000, height: 700, isMaximized: false };

describe('readWindowState', () => {
  test('reads back what was kept, and nothing more', () => {
    expect(readWindowState(JSON.stringify({ ...state, devTools: true }))).toEqual(state);
  });

  test.each([
    '',
    'null',
    '[]',
    '"wide"',
    '{"x":1',
    '{}',
    JSON.stringify({ ...state, x: '100' }),
    JSON.stringify({ ...state, x: 1.5 }),
    JSON.stringify({ ...state, y: 1e9 }),
    JSON.stringify({ ...state, width: 0 }),
    JSON.stringify({ ...state, height: -700 }),
    JSON.stringify({ ...state, height: null }),
    JSON.stringify({ ...state, isMaximized: 1 }),
  ])('forgets %s', (text) => {
    expect(readWindowState(text)).toBeNull();
  });
});

describe('placedWindow', () => {
  test('opens in the middle of the main display the first time', () => {
    expect(placedWindow(null, [laptop, wall])).toEqual({ x: 80, y: 33, width: 1280, height: 860, isMaximized: false });
  });

  test('opens where it stood, on whichever display that was', () => {
    expect(placedWindow(state, [laptop, wall])).toEqual(state);
    expect(placedWindow({ ...state, x: 2000, isMaximized: true }, [laptop, wall])).toEqual({
      ...state,
      x: 2000,
      isMaximized: true,
    });
  });

  test('comes back to the middle when its display is gone', () => {
    expect(placedWindow({ ...state, x: 2000 }, [laptop])).toEqual({ ...state, x: 220, y: 113 });
  });

  test.each([
    [{ ...state, x: -950 }, 'almost off the left edge'],
    [{ ...state, x: 1400 }, 'almost off the right edge'],
    [{ ...state, y: 890 }, 'below the bottom edge'],
    [{ ...state, y: -20 }, 'with its title bar above the top edge'],
  ])('comes back to the middle from %j: %s', (lost) => {
    expect(placedWindow(lost, [laptop])).toMatchObject({ x: 220, y: 113 });
  });

  test('shrinks to a display that is smaller than it was', () => {
    const small: Rectangle = { x: 0, y: 0, width: 1024, height: 600 };
    expect(placedWindow({ ...state, x: 0, y: 0, width: 2000, height: 1300 }, [small])).toEqual({
      x: 0,
      y: 0,
      width: 1024,
      height: 600,
      isMaximized: false,
    });
  });

  test('grows to the smallest size the page is drawn for', () => {
    expect(placedWindow({ ...state, width: 10, height: 10 }, [laptop])).toMatchObject(smallestWindow);
  });

  test('leaves its title bar within reach, wherever it stood', () => {
    const point = fc.integer({ min: -5000, max: 5000 });
    const length = fc.integer({ min: 1, max: 5000 });
    const kept = fc.record({ x: point, y: point, width: length, height: length, isMaximized: fc.boolean() });
    fc.assert(
      fc.property(kept, (before) => {
        const { x, y, width, height } = placedWindow(before, [laptop, wall]);
        return [laptop, wall].some(
          (area) =>
            Math.min(x + width, area.x + area.width) - Math.max(x, area.x) >= 120 &&
            y >= area.y &&
            y + 32 <= area.y + area.height &&
            width <= area.width &&
            height <= area.height,
        );
      }),
      { numRuns: 2000 },
    );
  });
});

describe('windowMemory', () => {
  const standIn = () =>
    Object.assign(new EventEmitter(), {
      getNormalBounds: () => ({ x: 100, y: 80, width: 1000, height: 700 }),
      isMaximized: () => true,
    }) as unknown as BrowserWindow;

  test('recalls nothing before a window has closed', () => {
    expect(windowMemory(join(tmpdir(), 'no-such-folder', 'window.json')).recall()).toBeNull();
  });

  test('keeps the unmaximized place and that it was maximized, when the window closes', () => {
    const folder = mkdtempSync(join(tmpdir(), 'window-memory-'));
    const memory = windowMemory(join(folder, 'window.json'));
    const window = standIn();
    memory.watch(window);
    window.emit('close');
    expect(memory.recall()).toEqual({ ...state, isMaximized: true });
    expect(readdirSync(folder)).toEqual(['window.json']);
  });

  test('lets the window close when its place can’t be written', () => {
    const file = join(mkdtempSync(join(tmpdir(), 'window-memory-')), 'file');
    writeFileSync(file, 'kept');
    const memory = windowMemory(join(file, 'window.json'));
    const window = standIn();
    memory.watch(window);
    expect(() => window.emit('close')).not.toThrow();
    expect(readFileSync(file, 'utf8')).toBe('kept');
  });
});
