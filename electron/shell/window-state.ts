import type { Rectangle } from 'electron';

/** Where a window stood when it was last closed, in the screen's own points. */
export interface WindowState extends Rectangle {
  readonly isMaximized: boolean;
}

/** The narrowest and lowest that the page is drawn for. */
export const smallestWindow = { width: 720, height: 520 } as const;

const firstSize = { width: 1280, height: 860 } as const;

/** So much of the title bar must lie on a display that a hand can take hold of it. */
const grip = { width: 120, height: 32 } as const;

function isPoint(value: unknown): value is number {
  return typeof value === 'number' && Number.isInteger(value) && Math.abs(value) <= 100_000;
}

/**
 * Reads a window's state back from the text it was kept as.
 *
 * @returns null when the text is not a whole state: then the window opens as the first time
 */
export function readWindowState(text: string): WindowState | null {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return null;
  }
  if (typeof value !== 'object' || value === null) return null;
  const { x, y, width, height, isMaximized } = value as Partial<Record<keyof WindowState, unknown>>;
  if (!isPoint(x) || !isPoint(y) || !isPoint(width) || !isPoint(height) || typeof isMaximized !== 'boolean')
    return null;
  if (width < 1 || height < 1) return null;
  return { x, y, width, height, isMaximized };
}

function overlap(start: number, length: number, otherStart: number, otherLength: number): number {
  return Math.min(start + length, otherStart + otherLength) - Math.max(start, otherStart);
}

function holdsGrip(area: Rectangle, state: Rectangle): boolean {
  return (
    overlap(state.x, state.width, area.x, area.width) >= Math.min(grip.width, state.width) &&
    overlap(state.y, grip.height, area.y, area.height) >= grip.height
  );
}

function between(low: number, value: number, high: number): number {
  return Math.max(low, Math.min(value, high));
}

/**
 * Where a window may open: where it stood, if its title bar can still be reached on some display; else in the middle.
 *
 * @param state what was kept, or null for the first time
 * @param areas the displays' free areas, the main one first; at least one
 * @returns bounds inside one of the areas in size, never smaller than the page is drawn for where the display allows
 */
export function placedWindow(state: WindowState | null, areas: readonly [Rectangle, ...Rectangle[]]): WindowState {
  const known = state === null ? undefined : areas.find((area) => holdsGrip(area, state));
  const area = known ?? areas[0];
  const wanted = state ?? firstSize;
  const width = Math.min(Math.max(wanted.width, smallestWindow.width), area.width);
  const height = Math.min(Math.max(wanted.height, smallestWindow.height), area.height);
  const isMaximized = state?.isMaximized ?? false;
  if (state === null || known === undefined) {
    const x = Math.round(area.x + (area.width - width) / 2);
    const y = Math.round(area.y + (area.height - height) / 2);
    return { x, y, width, height, isMaximized };
  }
  return {
    x: between(area.x - width + grip.width, state.x, area.x + area.width - grip.width),
    y: between(area.y, state.y, area.y + area.height - grip.height),
    width,
    height,
    isMaximized,
  };
}
