// Moments as a date field of the browser writes them, in this machine's own time.

function two(value: number): string {
  return String(value).padStart(2, '0');
}

/** @example localMoment(new Date()) // '2026-05-01T09:00' */
export function localMoment(at: Date): string {
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}T${two(at.getHours())}:${two(at.getMinutes())}`;
}

/** The next full hour, as a date field writes it. */
export function nextFullHour(now: Date): string {
  const at = new Date(now);
  at.setHours(at.getHours() + 1, 0, 0, 0);
  return localMoment(at);
}

/** ISO 8601 with this machine's offset at that moment; null when it is no moment. @example momentOf('2026-05-01T09:00') */
export function momentOf(local: string): string | null {
  const at = new Date(local);
  if (local === '' || Number.isNaN(at.getTime()) || at.getFullYear() < 1900 || at.getFullYear() > 2900) return null;
  const minutes = -at.getTimezoneOffset();
  const size = Math.abs(minutes);
  const offset = minutes === 0 ? 'Z' : `${minutes < 0 ? '-' : '+'}${two(Math.floor(size / 60))}:${two(size % 60)}`;
  return `${localMoment(at)}:00${offset}`;
}
