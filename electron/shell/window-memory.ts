import { readFileSync, renameSync, writeFileSync } from 'node:fs';
import type { BrowserWindow } from 'electron';
import { readWindowState, type WindowState } from './window-state.ts';

/** Keeps where the window stood, in one small file of the user's data folder. */
export interface WindowMemory {
  recall(): WindowState | null;
  /** Keeps the window's place each time it closes. */
  watch(window: Pick<BrowserWindow, 'on' | 'getNormalBounds' | 'isMaximized'>): void;
}

/** @param file where to keep it; it need not exist yet */
export function windowMemory(file: string): WindowMemory {
  function keep(state: WindowState): void {
    try {
      // Written beside and then renamed: a power cut leaves the old file or the new one.
      writeFileSync(`${file}.new`, JSON.stringify(state));
      renameSync(`${file}.new`, file);
    } catch {
      // A full or read-only disk costs only the window's place, and must not keep it from closing.
    }
  }
  return {
    recall() {
      try {
        return readWindowState(readFileSync(file, 'utf8'));
      } catch {
        return null;
      }
    },
    watch(window) {
      window.on('close', () => keep({ ...window.getNormalBounds(), isMaximized: window.isMaximized() }));
    },
  };
}
