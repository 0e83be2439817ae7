import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { findBrowser } from './find-browser.ts';

function aptGet(...args: string[]): boolean {
  const done = spawnSync('apt-get', args, {
    stdio: ['ignore', 'inherit', 'inherit'],
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
  });
  return done.status === 0;
}

/** The browser for the end-to-end tests: an installed one, Debian's own when we may install it, or Playwright's. */
export async function browserForTests(say: (line: string) => void): Promise<string | { readonly missing: string }> {
  const installed = findBrowser();
  if (installed !== null) return installed;
  if (existsSync('/etc/debian_version') && process.getuid?.() === 0) {
    say('No browser here: installing Debian’s package chromium for the end-to-end tests …');
    if (
      aptGet('update', '-qq') &&
      aptGet('install', '-y', '-qq', '--no-install-recommends', 'chromium', 'fonts-dejavu-core')
    ) {
      const found = findBrowser();
      if (found !== null) return found;
    }
  }
  const { chromium } = await import('@playwright/test');
  const own = chromium.executablePath();
  if (existsSync(own)) return own;
  return {
    missing:
      'The end-to-end tests need a browser: install Chromium, Chrome or Edge (or run: npx playwright install chromium).',
  };
}
