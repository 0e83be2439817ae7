import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { test as base, expect, type Page } from '@playwright/test';
import { type DeskLine, openDeskLine } from '#hosts/desk-line.ts';
import { startLoopback } from '#hosts/loopback/loopback-server.ts';
import type { AskedOf, RequestName, ValueOf } from '#shared/contract/all-requests.ts';

const dist = join(import.meta.dirname, '..', '..', 'dist');

/** The built workbench on a new kitchen: a page in a real browser, and the same desk to look at what was stored. */
export interface Workbench {
  readonly page: Page;
  readonly store: string;
  /** The folder of one's own translations. */
  readonly ownWords: string;
  ask<Name extends RequestName>(name: Name, input: AskedOf<Name>): Promise<ValueOf<Name>>;
  /** A fresh address with its ticket. */
  address(): string;
  /** Opens the page on a screen, such as /trials, and waits for its heading. */
  open(screen?: string): Promise<void>;
}

let asked = 0;

async function answered<Name extends RequestName>(
  line: DeskLine,
  name: Name,
  input: AskedOf<Name>,
): Promise<ValueOf<Name>> {
  asked += 1;
  const envelope = await line.ask({ ask: `test-${asked}`, name, input });
  if (!envelope.ok) throw new Error(`${name}: ${JSON.stringify(envelope.error)}`);
  return envelope.value as ValueOf<Name>;
}

export const test = base.extend<{ workbench: Workbench; sample: Workbench }>({
  workbench: async ({ page }, use) => {
    const folder = mkdtempSync(join(tmpdir(), 'sidejar-e2e-'));
    const store = join(folder, 'kitchen.sidejar');
    const ownWords = join(folder, 'words');
    const worker = pathToFileURL(join(dist, 'desk-worker.js'));
    const near = [join(folder, 'Desktop'), join(folder, 'Downloads')];
    const line = openDeskLine({ worker, store, ownWords, near, beside: 'in-place' });
    const loopback = await startLoopback({ line, page: join(dist, 'page'), port: 0 });
    const complaints: string[] = [];
    page.on('console', (message) => {
      if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
    });
    page.on('pageerror', (error) => complaints.push(error.message));
    await use({
      page,
      store,
      ownWords,
      ask: (name, input) => answered(line, name, input),
      address: () => loopback.address(),
      async open(screen = '/') {
        await page.goto(loopback.address());
        await expect(page.locator('h1')).toBeVisible();
        if (screen !== '/') {
          await page.evaluate((hash) => {
            location.hash = hash;
          }, screen);
          await expect(page.locator('h1')).toBeVisible();
        }
      },
    });
    // The page is sent away first: a server that vanishes under it would fill the console.
    await page.goto('about:blank');
    await loopback.close();
    await line.close();
    rmSync(folder, { recursive: true, force: true });
    expect(complaints).toEqual([]);
  },
  /** The workbench with the sample kitchen in it. */
  sample: async ({ workbench }, use) => {
    await workbench.ask('kitchen:sample', {});
    await use(workbench);
  },
});

export { expect };
