import { shownNumber } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';

// What the axes of several drawings have in common.

export const hoursAxis = phrase`hours since the start`;

/** An axis of hours since a jar's start, with these ticks. */
export function hoursAxisProps(ticks: readonly number[]) {
  return {
    dataKey: 'hours',
    type: 'number',
    domain: [ticks[0] ?? 0, ticks.at(-1) ?? 1],
    ticks: [...ticks],
    tickFormatter: shownNumber,
    stroke: 'var(--line-strong)',
    label: { value: hoursAxis, position: 'insideBottom', offset: -12, fill: 'var(--ink-soft)' },
  } as const;
}

const longestName = 13;

/** An axis of lanes, the first on top, each with its name. */
export function laneAxisProps(names: readonly string[]) {
  return {
    dataKey: 'lane',
    type: 'number',
    reversed: true,
    domain: [-0.6, names.length - 0.4],
    ticks: names.map((_, lane) => lane),
    interval: 0,
    tickFormatter: (lane: number) => {
      const name = names[lane] ?? '';
      return name.length > longestName ? `${name.slice(0, longestName - 1)}…` : name;
    },
    stroke: 'var(--line-strong)',
    axisLine: false,
    tickLine: false,
  } as const;
}
