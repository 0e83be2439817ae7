import { defineConfig } from '@playwright/test';

const browser = process.env.SIDEJAR_TEST_BROWSER;

export default defineConfig({
  testDir: '.',
  outputDir: '../../test-results',
  fullyParallel: true,
  workers: 2,
  timeout: 60_000,
  forbidOnly: true,
  // A busy machine may be late once; whatever needed a second try is named in the closing lines.
  retries: 1,
  expect: { timeout: 10_000 },
  reporter: [['list'], ['json']],
  use: {
    viewport: { width: 1280, height: 860 },
    locale: 'en-GB',
    timezoneId: 'UTC',
    launchOptions: {
      ...(browser === undefined ? {} : { executablePath: browser }),
      args: [
        ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
        '--no-first-run',
        '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1',
      ],
    },
  },
});
