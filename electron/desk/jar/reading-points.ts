import { sugarSolution } from '#core/ferment/sugar-solution.ts';
import { OutOfDomain } from '#core/out-of-domain.ts';
import { hoursBetween } from '#core/trial/moment.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { type Jar, readingsOfJar, sightingsOfJar } from '#store/rows/jars.ts';

type Reading = ValueOf<'jars:open'>['readings'][number];
type Course = ValueOf<'course:read'>['jars'][number];
export type Point = Course['brix'][number];

/** A sugar reading in °Bx, as read or worked out from its specific gravity; null outside the tables. */
export function brixOf(reading: Pick<Reading, 'brix' | 'sg'>): number | null {
  if (reading.brix !== null) return reading.brix;
  return reading.sg === null ? null : withinTables(() => sugarSolution({ sg: reading.sg ?? 1 }).brix);
}

/** Sugar of a reading as g/L; null outside the tables. */
export function sugarOfReading(reading: Pick<Reading, 'brix' | 'sg'>): number | null {
  const brix = brixOf(reading);
  return brix === null ? null : withinTables(() => sugarSolution({ brix }).sugar_g_per_L);
}

function withinTables(compute: () => number): number | null {
  try {
    return compute();
  } catch (error) {
    if (error instanceof OutOfDomain) return null;
    throw error;
  }
}

export interface ReadingInTime extends Reading {
  readonly hours: number;
}

/** The jar's clock: hours since it was started, or since it was planned to. */
export function startOf(jar: Jar): string {
  return jar.startedAt ?? jar.plannedStart;
}

/** A jar's readings on its own clock, the oldest first. */
export function readingsInTime(kitchen: Kitchen, jar: Jar): ReadingInTime[] {
  return readingsOfJar(kitchen.read, jar.id).map((reading) => ({
    ...reading,
    hours: hoursBetween(startOf(jar), reading.takenAt),
  }));
}

/** The readings that hold a figure, as points. */
export function pointsOf(readings: readonly ReadingInTime[], read: (reading: ReadingInTime) => number | null): Point[] {
  return readings.flatMap((reading) => {
    const value = read(reading);
    return value === null ? [] : [{ hours: reading.hours, value }];
  });
}

/** What was seen in a jar and done with it, in order. */
export function eventsOf(kitchen: Kitchen, jar: Jar): Course['events'] {
  const at = (moment: string) => hoursBetween(startOf(jar), moment);
  const done = (
    [
      ['pulled', jar.pulledAt, null],
      ['strained', jar.strainedAt, null],
      ['discarded', jar.discardedAt, jar.discardReason],
    ] as const
  ).flatMap(([what, moment, note]) => (moment === null ? [] : [{ hours: at(moment), what, note }]));
  const seen = sightingsOfJar(kitchen.read, jar.id)
    .filter(({ correctedAt }) => correctedAt === null)
    .map(({ seenAt, what, note }) => ({ hours: at(seenAt), what, note }));
  return [...seen, ...done].toSorted((a, b) => a.hours - b.hours);
}

/** Temperatures since the start, two thermometers read at one moment as their mean. */
export function temperaturesSinceStart(readings: readonly ReadingInTime[]): { hours: number; temperature_C: number }[] {
  const points = pointsOf(readings, ({ temperature_C }) => temperature_C).filter(({ hours }) => hours >= 0);
  return [...Map.groupBy(points, ({ hours }) => hours)].map(([hours, own]) => ({
    hours,
    temperature_C: own.reduce((sum, { value }) => sum + value, 0) / own.length,
  }));
}
