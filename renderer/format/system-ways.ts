import type { DecimalMark } from '#core/words/figures.ts';

// What this machine's own language has, wherever the window chose nothing else.

/** @param locale a BCP 47 tag; undefined: the machine's own */
export function systemDecimal(locale?: string): DecimalMark {
  const parts = new Intl.NumberFormat(locale).formatToParts(1.5);
  return parts.find(({ type }) => type === 'decimal')?.value === ',' ? ',' : '.';
}

/** @param locale a BCP 47 tag; undefined: the machine's own */
export function systemTwelveHours(locale?: string): boolean {
  const cycle = new Intl.DateTimeFormat(locale, { hour: 'numeric' }).resolvedOptions().hourCycle;
  return cycle === 'h12' || cycle === 'h11';
}

interface WeekInfo {
  readonly firstDay?: number;
}

/**
 * The day on which a week begins, as `Date` counts: 0 is Sunday. Monday where the browser doesn't know.
 *
 * @param locale a BCP 47 tag; the machine's own unless said
 */
export function systemFirstDay(locale = new Intl.DateTimeFormat().resolvedOptions().locale): number {
  const known = new Intl.Locale(locale) as Intl.Locale & { getWeekInfo?: () => WeekInfo; readonly weekInfo?: WeekInfo };
  const week = known.getWeekInfo?.() ?? known.weekInfo;
  return (week?.firstDay ?? 1) % 7;
}
