import type { App } from 'electron';

/** What a second start hands to the first. Its command line would arrive reordered by Chromium, so this goes instead. */
interface Handover {
  readonly store: string | null;
}

function readHandover(value: unknown): Handover {
  const store = typeof value === 'object' && value !== null && 'store' in value ? value.store : null;
  return { store: typeof store === 'string' && store !== '' ? store : null };
}

/**
 * Makes sure that the program runs once: a second start hands its kitchen to the first and ends.
 *
 * @param store the kitchen this start was asked for, or null for the usual one
 * @param whenStartedAgain told in the first program what a later start was asked for
 * @returns whether this is the first
 */
export function isSoleInstance(
  app: Pick<App, 'requestSingleInstanceLock' | 'on'>,
  store: string | null,
  whenStartedAgain: (store: string | null) => void,
): boolean {
  const mine: Handover = { store };
  if (!app.requestSingleInstanceLock({ ...mine })) return false;
  app.on('second-instance', (_event, _words, _folder, handover) => whenStartedAgain(readHandover(handover).store));
  return true;
}
