import { join } from 'node:path';
import { setImmediate as turn } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { backupKitchen } from '#store/keeping/backup-kitchen.ts';
import { checkStore } from '#store/keeping/check-store.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { openKitchen } from '#store/open-kitchen.ts';
import { temporaryDesk } from './temporary-kitchen.ts';

const head = ({ read }: Kitchen) =>
  read.one<{ hash: string }>('SELECT hash FROM changes ORDER BY id DESC LIMIT 1')?.hash;

describe('a backup made while others write', () => {
  it('ends, and is the kitchen of one moment: that of its beginning', async () => {
    const test = await temporaryDesk();
    await test.ask('kitchen:sample', {});
    const { kitchen } = test;
    // More pages than are copied in one go.
    kitchen.write({ request: 'test', summary: 'many' }, (writer) => {
      for (let row = 0; row < 600; row += 1) {
        writer.insert('tasters', { name: `Taster ${row}`, avoids: '[]', avoids_alcohol: 0, note: 'n'.repeat(3000) });
      }
    });
    const before = head(kitchen);
    const other = await openKitchen(kitchen.file);
    let isOver = false;
    const backup = backupKitchen(kitchen, join(kitchen.file, '..', 'copy.sidejar')).then((made) => {
      isOver = true;
      return made;
    });
    let written = 0;
    for (const writes of [kitchen, other]) {
      for (let number = 0; number < 20 && !isOver; number += 1) {
        await turn();
        writes.write({ request: 'test', summary: 'beside' }, (writer) =>
          writer.insert('tasters', { name: `Beside ${written}`, avoids: '[]', avoids_alcohol: 0, note: null }),
        );
        written += 1;
      }
    }
    const { file } = await backup;
    // Some of it was written before the copy was through.
    expect(written).toBeGreaterThan(5);
    other.close();
    const copy = await openKitchen(file);
    expect(head(copy)).toBe(before);
    expect(checkStore(copy, () => {})).toEqual([]);
    copy.close();
    expect(head(kitchen)).not.toBe(before);
  });
});
