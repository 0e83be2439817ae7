import type { Writer } from '#store/writer.ts';
import { standingSighting } from '../jar/sightings.ts';
import type { SavedTrial } from '../trial/insert-trial.ts';

// What the invented maker read, saw and sipped.

interface Logged {
  readonly days: SavedTrial;
  readonly state: SavedTrial;
}

function hoursAfter(moment: string, hours: number): string {
  return new Date(Date.parse(moment) + hours * 3_600_000).toISOString();
}

function startOf(writer: Writer, jar: string): string {
  const row = writer.row('jars', jar);
  return row?.started_at ?? row?.planned_start ?? writer.now;
}

/** Readings every twelve hours in the first trial's longest jar, and the first two days of the trial that still stands. */
export function insertSampleLog(writer: Writer, { days, state }: Logged, now: Date): void {
  const longest = days.jars.at(-1);
  if (longest !== undefined) {
    const start = startOf(writer, longest.id);
    const brix = [6.4, 6.1, 5.6, 5.0, 4.3, 3.7, 3.2, 2.9];
    const ph = [3.6, 3.55, 3.5, 3.42, 3.36, 3.3, 3.26, 3.22];
    brix.forEach((value, index) => {
      writer.insert('readings', {
        jar_id: longest.id,
        base_id: null,
        taken_at: hoursAfter(start, 12 * index),
        brix: value,
        sg: null,
        ph: ph[index] ?? null,
        acidity_g_per_L: null,
        acidity_as: null,
        temperature_C: 21.5 + (index % 3) * 0.5,
        note: null,
      });
    });
    const sips = [
      [24, 3, 2, 7, 5],
      [48, 4, 4, 5, 7],
      [72, 6, 6, 4, 8],
      [95, 8, 7, 2, 5],
    ] as const;
    for (const [hours, tang, fizz, sweetness, liking] of sips) {
      writer.insert('sips', {
        jar_id: longest.id,
        taken_at: hoursAfter(start, hours),
        tang,
        fizz,
        sweetness,
        liking,
        note: null,
      });
    }
  }
  state.jars.forEach((jar, index) => {
    const start = startOf(writer, jar.id);
    const isFrozen = jar.level === 'frozen';
    const seen = (hours: number, what: string) => {
      const at = hoursAfter(start, hours);
      if (Date.parse(at) > now.getTime()) return;
      writer.insert('sightings', { jar_id: jar.id, base_id: null, seen_at: at, what, note: null, ...standingSighting });
    };
    seen(isFrozen ? 26 + index : 9 + index, 'first-bubbles');
    seen(isFrozen ? 38 : 22, 'fruit-risen');
    [2, 14, 26, 38].forEach((hours, reading) => {
      writer.insert('readings', {
        jar_id: jar.id,
        base_id: null,
        taken_at: hoursAfter(start, hours),
        brix: (isFrozen ? 6.3 : 6.2) - reading * (isFrozen ? 0.25 : 0.45),
        sg: null,
        ph: null,
        acidity_g_per_L: null,
        acidity_as: null,
        temperature_C: isFrozen ? ([9, 17, 20.5, 21][reading] ?? 21) : 21,
        note: null,
      });
    });
  });
}
