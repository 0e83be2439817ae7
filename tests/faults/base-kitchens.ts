import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { deskOf } from '#desk/desk.ts';
import { openKitchen } from '#store/open-kitchen.ts';

export const oldKitchen = join(import.meta.dirname, '..', 'fixtures', 'kitchen-of-schema-0010.sidejar');

export interface BaseKitchen {
  readonly folder: string;
  readonly file: string;
  remove(): void;
}

/** A kitchen with the sample in it, made once and then only copied. */
export async function sampleKitchen(): Promise<BaseKitchen> {
  const folder = mkdtempSync(join(tmpdir(), 'sidejar-base-'));
  const file = join(folder, 'k.sidejar');
  const kitchen = await openKitchen(file, { clock: () => new Date('2026-05-01T08:00:00.000Z') });
  const filled = await deskOf(kitchen).handle('kitchen:sample', {});
  if (!filled.ok) throw new Error(filled.error.message);
  kitchen.db.pragma('wal_checkpoint(TRUNCATE)');
  kitchen.close();
  return { folder, file, remove: () => rmSync(folder, { recursive: true, force: true }) };
}
