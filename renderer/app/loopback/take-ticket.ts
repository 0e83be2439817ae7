/** What the address's fragment brings when the page is opened over loopback. */
export interface Ticket {
  readonly ticket: string;
  /** The route to show once the ticket is traded. */
  readonly go: string;
}

/**
 * Takes the single-use ticket out of the address, so that neither history nor a shoulder keeps it.
 *
 * @param hash such as `#ticket=abc&go=/trials`
 * @param replace puts another fragment in its place
 * @returns the ticket, or null when the fragment is an ordinary route
 */
export function takeTicket(hash: string, replace: (hash: string) => void): Ticket | null {
  if (!hash.startsWith('#ticket=')) return null;
  const fields = new URLSearchParams(hash.slice(1));
  const wanted = fields.get('go') ?? '/';
  const go = wanted.startsWith('/') ? wanted : '/';
  replace(`#${go}`);
  return { ticket: fields.get('ticket') ?? '', go };
}
