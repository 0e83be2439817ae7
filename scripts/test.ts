import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildWhenStale } from './build.ts';
import { lintSteps } from './lint.ts';
import { runTool } from './run-tool.ts';
import { browserForTests } from './test-browser.ts';
import { countPlaywright, countVitest, type Tally } from './test-tally.ts';

// npm test: types, lint, unit, contract and store tests, then the built workbench end to end. One closing line over all.

const say = (line: string): void => {
  process.stdout.write(`${line}\n`);
};
const reports = mkdtempSync(join(tmpdir(), 'sidejar-test-'));
let passed = 0;
const failed: string[] = [];
const skipped: string[] = [];
const late: string[] = [];

function add(title: string, tally: Tally): void {
  passed += tally.passed;
  failed.push(...tally.failed);
  skipped.push(...tally.skipped);
  late.push(...(tally.late ?? []));
  say(`— ${title}: ${tally.passed} passed, ${tally.failed.length} failed`);
}

function check(title: string, code: number): void {
  add(title, code === 0 ? { passed: 1, failed: [], skipped: [] } : { passed: 0, failed: [title], skipped: [] });
}

/** A runner's own count; a runner that ended badly without one failure of its own counts as one. */
function counted(title: string, code: number, read: () => Tally): void {
  let tally: Tally;
  try {
    tally = read();
  } catch {
    tally = { passed: 0, failed: [], skipped: [] };
  }
  const silent = code !== 0 && tally.failed.length === 0 ? [`${title}: ended with ${code}, and named no test`] : [];
  const empty = code === 0 && tally.passed === 0 ? [`${title}: no test ran`] : [];
  add(title, { ...tally, failed: [...tally.failed, ...silent, ...empty] });
}

async function endToEnd(): Promise<void> {
  const title = 'end to end';
  try {
    await buildWhenStale(say);
  } catch (error) {
    say(error instanceof Error ? error.message : String(error));
    check('build', 1);
    return;
  }
  check('build', 0);
  const browser = await browserForTests(say);
  if (typeof browser !== 'string') {
    say(browser.missing);
    check(title, 1);
    return;
  }
  const report = join(reports, 'playwright.json');
  const code = await runTool(['@playwright/test/cli.js', 'test', '--config', 'tests/e2e/playwright.config.ts'], {
    SIDEJAR_TEST_BROWSER: browser,
    PLAYWRIGHT_JSON_OUTPUT_NAME: report,
  });
  counted(title, code, () => countPlaywright(readFileSync(report, 'utf8')));
}

check('types', await runTool(['typescript/bin/tsc', '--noEmit']));
for (const { title, args } of lintSteps) check(title, await runTool(args));
const vitestReport = join(reports, 'vitest.json');
const vitest = await runTool([
  'vitest/vitest.mjs',
  'run',
  '--reporter=default',
  '--reporter=json',
  `--outputFile.json=${vitestReport}`,
]);
counted('unit, contract and store', vitest, () => countVitest(readFileSync(vitestReport, 'utf8')));
await endToEnd();
rmSync(reports, { recursive: true, force: true });

for (const line of late) say(`passed at the second try: ${line}`);
for (const line of skipped) say(`skipped: ${line}`);
// Once more at the end: what failed an hour up in the output is not looked for.
for (const line of failed) say(`failed: ${line}`);
say(`${passed} passed, ${failed.length} failed`);
process.exit(failed.length === 0 ? 0 : 1);
