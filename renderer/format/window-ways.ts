import { layDecimalMark } from '#core/words/figures.ts';
import { isLanguageTag } from '#shared/asked-ways.ts';
import { systemDecimal, systemFirstDay, systemTwelveHours } from './system-ways.ts';

// How this window shows things: kept by the window, not by the kitchen, which others may open on other machines.

export const themes = ['system', 'light', 'dark'] as const;
export const hourWays = ['system', '24', '12'] as const;
export const decimalWays = ['system', '.', ','] as const;
export const firstDays = ['system', 'monday', 'saturday', 'sunday'] as const;

export interface WindowWays {
  /** A BCP 47 tag; `system`: the machine's own, where there are words of it, else English. */
  readonly language: string;
  readonly theme: (typeof themes)[number];
  readonly hours: (typeof hourWays)[number];
  readonly decimal: (typeof decimalWays)[number];
  readonly firstDay: (typeof firstDays)[number];
}

const place = 'sidejar.window';
const usual: WindowWays = {
  language: 'system',
  theme: 'system',
  hours: 'system',
  decimal: 'system',
  firstDay: 'system',
};

function oneOf<Way extends string>(ways: readonly Way[], given: unknown, otherwise: Way): Way {
  return ways.find((way) => way === given) ?? otherwise;
}

function stored(): WindowWays {
  try {
    const given = JSON.parse(globalThis.localStorage?.getItem(place) ?? '{}') as Partial<Record<string, unknown>>;
    return {
      language: isLanguageTag(given.language) ? given.language : usual.language,
      theme: oneOf(themes, given.theme, usual.theme),
      hours: oneOf(hourWays, given.hours, usual.hours),
      decimal: oneOf(decimalWays, given.decimal, usual.decimal),
      firstDay: oneOf(firstDays, given.firstDay, usual.firstDay),
    };
  } catch {
    return usual;
  }
}

let current: WindowWays | null = null;
const listeners = new Set<() => void>();

export function windowWays(): WindowWays {
  current ??= stored();
  return current;
}

/** Lays the theme on the page: the system's unless this window has its own. */
export function layTheme(root: HTMLElement): void {
  const { theme } = windowWays();
  if (theme === 'system') delete root.dataset.theme;
  else root.dataset.theme = theme;
}

/** Figures are shown with this window's decimal mark from now on. */
export function layDecimal(): void {
  const { decimal } = windowWays();
  layDecimalMark(decimal === 'system' ? systemDecimal() : decimal);
}

export function changeWindowWays(change: Partial<WindowWays>): void {
  current = { ...windowWays(), ...change };
  try {
    globalThis.localStorage?.setItem(place, JSON.stringify(current));
  } catch {
    // A window that may keep nothing still shows what was chosen, until it is closed.
  }
  layTheme(document.documentElement);
  layDecimal();
  for (const listener of listeners) listener();
}

export function onWindowWays(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** Whether hours go to twelve: as chosen, else as this machine's language has it. */
export function hasTwelveHours(): boolean {
  const { hours } = windowWays();
  return hours === 'system' ? systemTwelveHours() : hours === '12';
}

const numberOf = { sunday: 0, monday: 1, saturday: 6 } as const;

/** The day on which a week begins, as `Date` counts: 0 is Sunday. */
export function firstDayOfWeek(): number {
  const { firstDay } = windowWays();
  return firstDay === 'system' ? systemFirstDay() : numberOf[firstDay];
}
