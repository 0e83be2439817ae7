import { type Bridge, bridgeName } from '#shared/carriage.ts';
import { loopbackBridge } from './loopback/loopback-bridge.ts';
import { takeTicket } from './loopback/take-ticket.ts';
import { tradeTicket } from './loopback/trade-ticket.ts';

/** Where the key waits for a reload. Session storage: this tab only, gone when it closes. */
const keptAs = 'sidejar-key';

/** What finding a bridge needs of the browser. */
export interface Surroundings {
  readonly window: Window;
  readonly fetch?: typeof fetch;
}

function offeredBridge(window: Window): Bridge | null {
  const offered: unknown = (window as unknown as Record<string, unknown>)[bridgeName];
  return typeof offered === 'object' && offered !== null ? (offered as Bridge) : null;
}

/**
 * The bridge to the desk: the one that the window's preload offers, or loopback with a traded ticket or a kept key.
 *
 * @returns null when there is neither: the address was used already
 */
export async function findBridge({ window, fetch: carry = fetch }: Surroundings): Promise<Bridge | null> {
  const offered = offeredBridge(window);
  if (offered !== null) return offered;
  const taken = takeTicket(window.location.hash, (hash) => window.history.replaceState(null, '', hash));
  if (taken !== null) {
    const key = await tradeTicket(taken.ticket, carry);
    if (key !== null) window.sessionStorage.setItem(keptAs, key);
  }
  const key = window.sessionStorage.getItem(keptAs);
  return key === null ? null : loopbackBridge({ key, fetch: carry });
}

/** Throws the kept key away, once the desk has refused it. */
export function forgetKey(window: Window): void {
  window.sessionStorage.removeItem(keptAs);
}
