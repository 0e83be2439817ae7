import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type BaseKitchen, oldKitchen, sampleKitchen } from './base-kitchens.ts';
import { type BuiltChild, buildChild } from './build-child.ts';
import { killRuns } from './kill-runs.ts';

let child: BuiltChild;
let base: BaseKitchen;

beforeAll(async () => {
  child = await buildChild();
  base = await sampleKitchen();
}, 120_000);

afterAll(() => {
  child.remove();
  base.remove();
});

/** The kinds of work that must have been met, whatever else was. */
const named = ['scores:enter', 'readings:log', 'photos:add', 'recipes:promote', 'scores:import', 'data:takeIn'];

describe('a program that is killed', () => {
  it('300 times at random moments loses nothing it acknowledged and leaves nothing half done', async () => {
    const report = await killRuns({
      tries: 300,
      seed: 4,
      meets: named,
      child: child.file,
      bases: { 'a kitchen of today': base.file, 'an older kitchen': oldKitchen },
    });
    expect(report.problems).toEqual([]);
    expect(report.tries).toBeGreaterThanOrEqual(300);
    expect(report).toMatchObject({ survived: report.tries, lost: 0 });
    // The kills must have met the work itself, not only the pauses: many kinds of it, and the opening of an older kitchen.
    expect(Object.keys(report.during).length).toBeGreaterThan(12);
    expect(report.during['opening an older kitchen']).toBeGreaterThan(5);
    for (const kind of named) expect(report.during[kind] ?? 0, kind).toBeGreaterThan(0);
  }, 600_000);
});
