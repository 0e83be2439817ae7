import { randomBytes, timingSafeEqual } from 'node:crypto';

/** Who may ask. A ticket is traded once for a key; the key goes with every request in a header. */
export interface Access {
  /** A fresh single-use ticket; earlier unused ones stop working. */
  issueTicket(): string;
  /** The key for an unused ticket, or null. */
  trade(ticket: unknown): string | null;
  isKey(key: unknown): boolean;
}

const ticketLife_ms = 10 * 60_000;

function secret(): string {
  return randomBytes(24).toString('base64url');
}

function same(a: string, b: string): boolean {
  const [left, right] = [Buffer.from(a), Buffer.from(b)];
  return left.length === right.length && timingSafeEqual(left, right);
}

/** Keys and tickets of 192 random bits, held in memory only. */
export function accessFor(clock: () => number): Access {
  let ticket: { text: string; until: number } | null = null;
  const keys: string[] = [];
  return {
    issueTicket() {
      ticket = { text: secret(), until: clock() + ticketLife_ms };
      return ticket.text;
    },
    trade(offered) {
      if (ticket === null || typeof offered !== 'string' || !same(offered, ticket.text)) return null;
      const inTime = clock() <= ticket.until;
      ticket = null;
      if (!inTime) return null;
      const key = secret();
      keys.push(key);
      return key;
    },
    isKey: (offered) => typeof offered === 'string' && keys.some((key) => same(key, offered)),
  };
}
