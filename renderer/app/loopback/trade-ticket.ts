/** Trades a single-use ticket for a key; null when the ticket was used before or is not one of ours. */
export async function tradeTicket(ticket: string, carry: typeof fetch = fetch): Promise<string | null> {
  try {
    const response = await carry('/key', {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ ticket }),
    });
    if (!response.ok) return null;
    const answer: unknown = await response.json();
    const key = typeof answer === 'object' && answer !== null ? (answer as { key?: unknown }).key : undefined;
    return typeof key === 'string' && key !== '' ? key : null;
  } catch {
    return null;
  }
}
