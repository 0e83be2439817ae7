import { existsSync, mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { _electron, type ElectronApplication, expect, type Page, test } from '@playwright/test';
import { inspectElectronRuntime } from '#scripts/electron-runtime.ts';
import type { Bridge } from '#shared/carriage.ts';

// The built program in Electron itself, where its runtime is at hand: Playwright would start its download otherwise.

const root = join(import.meta.dirname, '..', '..');
const runtime = inspectElectronRuntime();

test.describe('the window of the installed program', () => {
  // One window for all: a second start would hand over to the first.
  test.describe.configure({ mode: 'serial' });
  let electron: ElectronApplication;
  let page: Page;
  let store = '';

  // biome-ignore lint/suspicious/noSkippedTests: the runtime is a separate download that not every machine can make
  test.skip('lack' in runtime, `no Electron runtime here: ${'lack' in runtime ? runtime.lack : ''}`);

  test.beforeAll(async () => {
    if ('lack' in runtime) return;
    expect(existsSync(join(root, 'dist', 'main.js')), 'the program is built first: npm run build').toBe(true);
    const folder = mkdtempSync(join(tmpdir(), 'electron-smoke-'));
    store = join(folder, 'smoke.sidejar');
    // Chromium’s own sandbox refuses to run for root.
    const asRoot = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
    electron = await _electron.launch({
      executablePath: runtime.executable,
      args: [...asRoot, root, '--store', store],
      env: { ...(process.env as Record<string, string>), HOME: folder, XDG_DATA_HOME: folder, APPDATA: folder },
    });
    page = await electron.firstWindow();
    await page.waitForLoadState('domcontentloaded');
  });

  test.afterAll(async () => {
    await electron?.close();
  });

  test('opens the page under its own origin', async () => {
    expect(page.url()).toMatch(/^app:\/\/sidejar\//);
    await expect(page).toHaveTitle(/Sidejar/);
    await expect(page.getByRole('navigation').first()).toBeVisible();
  });

  test('offers the bridge and nothing of Node', async () => {
    const seen = await page.evaluate(() => {
      const { sidejar, ...rest } = window as unknown as Record<string, object>;
      return {
        bridge: Object.keys(sidejar ?? {}).sort(),
        node: ['require', 'process', 'ipcRenderer'].filter((name) => name in rest),
      };
    });
    expect(seen).toEqual({ bridge: ['ask', 'listen', 'stop'], node: [] });
  });

  test('answers a request over the bridge', async () => {
    const answer = await page.evaluate(() => {
      const { sidejar } = window as unknown as { sidejar: Bridge };
      return sidejar.ask({ ask: 'smoke', name: 'kitchen:open', input: {} });
    });
    expect(answer).toMatchObject({ ok: true, value: { file: store } });
  });

  test('refuses to leave the page and to open another window', async () => {
    const before = page.url();
    await page.evaluate(() => {
      window.open('http://example.com/');
      window.location.href = 'http://example.com/';
    });
    await page.waitForTimeout(500);
    expect(page.url()).toBe(before);
    expect(electron.windows()).toHaveLength(1);
  });

  test('refuses what the policy forbids: a script written into the page, and requests to elsewhere', async () => {
    const outcome = await page.evaluate(async () => {
      const script = document.createElement('script');
      script.textContent = 'document.body.dataset.ran = "yes"';
      document.body.append(script);
      const fetched = await fetch('https://example.com/').then(
        () => 'fetched',
        () => 'refused',
      );
      return { ran: document.body.dataset.ran ?? 'no', fetched };
    });
    expect(outcome).toEqual({ ran: 'no', fetched: 'refused' });
  });
});
