import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach } from 'vitest';
import { type Desk, deskOf } from '#desk/desk.ts';
import type { AskedOf, RequestName, ValueOf } from '#shared/contract/all-requests.ts';
import type { FailureReport } from '#shared/failure.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { openKitchen } from '#store/open-kitchen.ts';

// Real files in a folder that is removed after each test.

const folders: string[] = [];
const kitchens: Kitchen[] = [];

afterEach(() => {
  for (const kitchen of kitchens.splice(0)) if (kitchen.db.open) kitchen.close();
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'sidejar-'));
  folders.push(folder);
  return folder;
}

/** A clock that a test moves by hand. */
export function handClock(start = '2026-05-01T08:00:00.000Z'): { now: () => Date; move(hours: number): void } {
  let time = Date.parse(start);
  return {
    now: () => new Date(time),
    move(hours) {
      time += hours * 3_600_000;
    },
  };
}

export async function temporaryKitchen(
  clock = handClock(),
  file = join(temporaryFolder(), 'k.sidejar'),
): Promise<Kitchen> {
  const kitchen = await openKitchen(file, { clock: clock.now });
  kitchens.push(kitchen);
  return kitchen;
}

/** A desk over a new kitchen whose answers are held against the contract; mistakes of our own fail the test. */
export interface TestDesk {
  readonly kitchen: Kitchen;
  readonly desk: Desk;
  readonly clock: ReturnType<typeof handClock>;
  ask<Name extends RequestName>(name: Name, input: AskedOf<Name>): Promise<ValueOf<Name>>;
  fail(name: string, input: unknown): Promise<FailureReport>;
}

export async function temporaryDesk(clock = handClock()): Promise<TestDesk> {
  const kitchen = await temporaryKitchen(clock);
  const desk = deskOf(kitchen, {
    checkAnswers: true,
    onMistake(error) {
      throw error;
    },
  });
  return {
    kitchen,
    desk,
    clock,
    async ask<Name extends RequestName>(name: Name, input: AskedOf<Name>) {
      const envelope = await desk.handle(name, input);
      if (!envelope.ok) throw new Error(`${name} failed: ${JSON.stringify(envelope.error)}`);
      return envelope.value as ValueOf<Name>;
    },
    async fail(name, input) {
      const envelope = await desk.handle(name, input);
      if (envelope.ok) throw new Error(`${name} should have failed`);
      return envelope.error;
    },
  };
}
