import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type BaseKitchen, sampleKitchen } from './base-kitchens.ts';
import { cutLog } from './cut-log.ts';
import { flippedBits } from './flipped-bits.ts';
import { fullByPages, fullDisk } from './full-disk.ts';
import { lockedFile, readOnlyFolder, takenFile } from './taken-files.ts';

let base: BaseKitchen;

beforeAll(async () => {
  base = await sampleKitchen();
}, 60_000);

afterAll(() => base.remove());

const slow_ms = 300_000;

describe('a power cut', () => {
  it(
    'that leaves any part of the log leaves the state after some acknowledged write',
    async () => {
      const row = await cutLog(base, 3, 3);
      expect(row.problems).toEqual([]);
      expect(row.tries).toBeGreaterThan(200);
    },
    slow_ms,
  );
});

describe('a bad disk', () => {
  it(
    'with a bit flipped is refused, found by the check, or reads as before; never silently wrong, never written to',
    async () => {
      const { problems, flips } = await flippedBits(base, 150, 2);
      expect(problems).toEqual([]);
      expect(flips.found + flips.refused).toBeGreaterThan(30);
      expect(flips.rescued).toBeGreaterThan(0);
    },
    slow_ms,
  );

  it(
    'that is full is said to be, keeps what was acknowledged, and works again with room',
    async () => {
      for (const row of [await fullByPages(base, 8, 6), await fullDisk(base, 8, 5)]) {
        if ('because' in row) continue;
        expect(row.problems).toEqual([]);
      }
    },
    slow_ms,
  );

  it(
    'that is write-protected, locked or taken away is said to be, and nothing acknowledged is lost',
    async () => {
      for (const row of [await readOnlyFolder(base, 2), await lockedFile(base, 6, 7), await takenFile(base, 16, 8)]) {
        if ('because' in row) continue;
        expect(row.problems).toEqual([]);
      }
    },
    slow_ms,
  );
});
