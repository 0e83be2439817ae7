import { dayWords } from '#renderer/format/moments.ts';

/** Sips of one calendar day, under that day's name. */
export interface SipDay<Sip> {
  readonly day: string;
  readonly sips: readonly Sip[];
}

/** Groups sips by this machine's calendar days, the newest day first, and within a day by jar and then by time. */
export function sipsByDay<Sip extends { readonly takenAt: string; readonly label: string }>(
  sips: readonly Sip[],
): SipDay<Sip>[] {
  const newestFirst = sips.toSorted((a, b) => Date.parse(b.takenAt) - Date.parse(a.takenAt));
  const days = new Map<string, Sip[]>();
  for (const sip of newestFirst) {
    const key = new Date(sip.takenAt).toDateString();
    days.set(key, [...(days.get(key) ?? []), sip]);
  }
  return [...days.values()].map((ofDay) => ({
    day: dayWords(ofDay[0]?.takenAt ?? ''),
    sips: ofDay.toSorted(
      (a, b) => a.label.localeCompare(b.label, 'en') || Date.parse(a.takenAt) - Date.parse(b.takenAt),
    ),
  }));
}
