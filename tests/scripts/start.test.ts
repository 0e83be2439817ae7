import { chmodSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { findBrowser, hasDisplay } from '#scripts/find-browser.ts';
import { readStartWords } from '#scripts/start-words.ts';
import { countPlaywright, countVitest } from '#scripts/test-tally.ts';
import { temporaryFolder } from '#tests/store/temporary-kitchen.ts';

describe('readStartWords(words, folder)', () => {
  it('reads the options; a relative store is meant from where the person stood', () => {
    expect(readStartWords([], '/home/me')).toEqual({ serve: false, port: 0, store: null, fetchElectron: false });
    expect(readStartWords(['--serve', '--port', '4173', '--store', 'k.sidejar'], '/home/me')).toEqual({
      serve: true,
      port: 4173,
      store: '/home/me/k.sidejar',
      fetchElectron: false,
    });
    expect(readStartWords(['--store=/tmp/x.sidejar', '--fetch-electron'], '/')).toMatchObject({
      store: '/tmp/x.sidejar',
      fetchElectron: true,
    });
  });

  it('says in a sentence what it can’t read', () => {
    const problem = (...words: string[]) => (readStartWords(words, '/') as { problem?: string }).problem;
    expect(problem('--port', 'many')).toBe('--port needs a whole number from 0 to 65535, not “many”.');
    expect(problem('--port', '70000')).toContain('0 to 65535');
    expect(problem('--colour', 'red')).toContain('--store FILE');
    expect(problem('--store', '')).toContain('needs a file');
  });
});

describe('findBrowser(platform, env)', () => {
  it('finds an executable of a known name on the PATH, in its order, and nothing that cannot run', () => {
    const folder = temporaryFolder();
    const put = (name: string, mode: number) => {
      writeFileSync(join(folder, name), '#!/bin/sh\n');
      chmodSync(join(folder, name), mode);
    };
    expect(findBrowser('linux', { PATH: folder })).toBeNull();
    put('chromium', 0o644);
    put('google-chrome', 0o755);
    mkdirSync(join(folder, 'chromium-browser'));
    expect(findBrowser('linux', { PATH: `/nowhere:${folder}` })).toBe(join(folder, 'google-chrome'));
    chmodSync(join(folder, 'chromium'), 0o755);
    expect(findBrowser('linux', { PATH: folder })).toBe(join(folder, 'chromium'));
    expect(findBrowser('linux', { PATH: folder, SIDEJAR_BROWSER: '/nowhere/x' })).toBeNull();
  });

  it('knows when no window can appear', () => {
    expect(hasDisplay('linux', {})).toBe(false);
    expect(hasDisplay('linux', { DISPLAY: ':1' })).toBe(true);
    expect(hasDisplay('linux', { WAYLAND_DISPLAY: 'wayland-0' })).toBe(true);
    expect(hasDisplay('win32', {})).toBe(true);
  });
});

describe('the count over all runners', () => {
  it('counts a file that could not be loaded as a failure, and tells each failure again in few lines', () => {
    const report = {
      numPassedTests: 2,
      testResults: [
        { name: 'x.test.ts', status: 'failed', message: 'No such module', assertionResults: [] },
        {
          name: 'y.test.ts',
          status: 'failed',
          message: '',
          assertionResults: [
            {
              status: 'failed',
              fullName: 'a',
              failureMessages: [`\u001b[31mexpected 1\u001b[39m\n\n  to be 2${'\nat'.repeat(50)}`],
            },
          ],
        },
        {
          name: 'z.test.ts',
          status: 'passed',
          message: '',
          assertionResults: [
            { status: 'passed', fullName: 'b' },
            { status: 'pending', fullName: 'c' },
          ],
        },
      ],
    };
    expect(countVitest(JSON.stringify(report))).toEqual({
      passed: 2,
      failed: ['x.test.ts\n    No such module', `y.test.ts: a\n    expected 1\n    to be 2${'\n    at'.repeat(6)}`],
      skipped: ['c'],
    });
  });

  it('names each skipped end-to-end test with its reason, each failed one with its error, and counts errors outside tests', () => {
    const spec = (title: string, status: string, annotations: object[] = []) => ({
      title,
      tests: [{ status, annotations, results: [{ error: { message: 'first' } }, { error: { message: 'last' } }] }],
    });
    const report = {
      errors: [{}],
      suites: [
        {
          specs: [spec('a', 'expected'), spec('b', 'unexpected'), spec('d', 'flaky')],
          suites: [{ specs: [spec('c', 'skipped', [{ type: 'skip', description: 'no runtime' }])] }],
        },
      ],
    };
    expect(countPlaywright(JSON.stringify(report))).toEqual({
      passed: 2,
      failed: ['outside the tests', 'b\n    last'],
      skipped: ['c (no runtime)'],
      late: ['d\n    first'],
    });
  });
});
