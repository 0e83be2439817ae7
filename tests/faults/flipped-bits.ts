import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { seededRandom } from '#core/numeric/seeded-random.ts';
import { Failure } from '#shared/failure.ts';
import { checkStore } from '#store/keeping/check-store.ts';
import { rescueKitchen } from '#store/keeping/rescue-kitchen.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { openKitchen } from '#store/open-kitchen.ts';
import { tableNames } from '#store/tables.ts';
import type { BaseKitchen } from './base-kitchens.ts';
import { type FaultRow, tally } from './fault-row.ts';

const page_bytes = 4096;
/** Every so manieth damaged kitchen is also rescued, which takes longer than looking at it. */
const rescuesEvery = 20;

/** Every row that the log covers, as it is read. */
function covered(kitchen: Kitchen): string {
  return JSON.stringify(tableNames.map((table) => kitchen.read.all(`SELECT * FROM ${table} ORDER BY id`)));
}

/** What people see that the log does not cover: half-made drafts and history's own lines. */
function uncovered(kitchen: Kitchen): string {
  const lines = 'SELECT id, at, request, summary, kind, target, fixed_because FROM steps ORDER BY id';
  return JSON.stringify([kitchen.read.all('SELECT * FROM drafts ORDER BY name'), kitchen.read.all(lines)]);
}

function reading(read: () => string): string | null {
  try {
    return read();
  } catch {
    // SQLite refused to read it, which is what the person is told.
    return null;
  }
}

/** The counts of what became of the flipped bits. */
export interface Flips {
  refused: number;
  found: number;
  unread: number;
  outside: number;
  rescued: number;
  rowsLost: number;
}

/**
 * Flips one bit in each of so many random pages, one kitchen each. SQLite keeps no checksum of a page, so a flip may go unseen by it;
 * then the change log must see it. Lost is: a row that reads otherwise than it was written while the check says that all is well,
 * a file that was written to, or an error without a plain sentence.
 */
export async function flippedBits(
  base: BaseKitchen,
  tries: number,
  seed: number,
): Promise<FaultRow & { flips: Flips }> {
  const whole = readFileSync(base.file);
  const original = await openKitchen(base.file);
  const [rows, lines] = [covered(original), uncovered(original)];
  original.close();
  const random = seededRandom(seed);
  const flips: Flips = { refused: 0, found: 0, unread: 0, outside: 0, rescued: 0, rowsLost: 0 };
  const folder = mkdtempSync(join(base.folder, 'flip-'));

  const one = async (number: number): Promise<string[]> => {
    const file = join(folder, `k${number}.sidejar`);
    const bytes = Buffer.from(whole);
    const at = random.below(whole.length / page_bytes) * page_bytes + random.below(page_bytes);
    bytes.writeUInt8(bytes.readUInt8(at) ^ (1 << random.below(8)), at);
    writeFileSync(file, bytes);
    const problems: string[] = [];
    let kitchen: Kitchen | null = null;
    try {
      kitchen = await openKitchen(file);
      const found = checkStore(kitchen, () => {});
      const [now, said] = [kitchen, kitchen].map((each, part) =>
        reading(() => (part === 0 ? covered(each) : uncovered(each))),
      );
      if (found.length > 0) {
        flips.found += 1;
        if (number % rescuesEvery === 0) {
          const rescued = await rescueKitchen(kitchen, `${file}.rescued.sidejar`);
          flips.rescued += 1;
          flips.rowsLost += rescued.lost;
        }
      } else if (now !== rows) problems.push(`byte ${at}: a row reads otherwise, and the check says nothing`);
      else if (said !== lines) flips.outside += 1;
      else flips.unread += 1;
    } catch (error) {
      if (error instanceof Failure && error.code !== 'internal') flips.refused += 1;
      else problems.push(`byte ${at}: ${error instanceof Error ? error.message : String(error)}`);
    }
    kitchen?.close();
    if (!readFileSync(file).equals(bytes)) problems.push(`byte ${at}: the damaged file was written to`);
    for (const end of ['', '-wal', '-shm']) rmSync(`${file}${end}`, { force: true });
    return problems;
  };

  const row = await tally('a bit flipped in a random page', tries, one, () =>
    [
      `${flips.refused} not opened, with the reason`,
      `${flips.found} found by the check`,
      `${flips.unread} changed nothing that is read`,
      `${flips.outside} changed only drafts or history’s lines, which the log does not cover`,
      `${flips.rescued} of the found rescued, ${flips.rowsLost} rows lost in them`,
    ].join('; '),
  );
  rmSync(folder, { recursive: true, force: true });
  return { ...row, flips };
}
