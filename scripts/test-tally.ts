/** What a test runner counted. `skipped` names each skipped test with its reason. */
export interface Tally {
  readonly passed: number;
  readonly failed: number;
  readonly skipped: readonly string[];
  /** Passed only at the second try. */
  readonly late?: readonly string[];
}

interface VitestReport {
  numPassedTests: number;
  numFailedTests: number;
  testResults: { status: string; assertionResults: { status: string; fullName: string }[] }[];
}

/** Counts Vitest's JSON report; a file that could not be loaded counts as one failure. */
export function countVitest(text: string): Tally {
  const report = JSON.parse(text) as VitestReport;
  const brokenFiles = report.testResults.filter(
    ({ status, assertionResults }) => status === 'failed' && assertionResults.every((each) => each.status !== 'failed'),
  );
  const skipped = report.testResults
    .flatMap(({ assertionResults }) => assertionResults)
    .filter(({ status }) => status !== 'passed' && status !== 'failed')
    .map(({ fullName }) => fullName);
  return { passed: report.numPassedTests, failed: report.numFailedTests + brokenFiles.length, skipped };
}

interface PlaywrightSuite {
  suites?: PlaywrightSuite[];
  specs?: { title: string; tests: { status: string; annotations: { type: string; description?: string }[] }[] }[];
}

/** Counts Playwright's JSON report. */
export function countPlaywright(text: string): Tally {
  const report = JSON.parse(text) as PlaywrightSuite & { errors?: unknown[] };
  const skipped: string[] = [];
  const late: string[] = [];
  let passed = 0;
  let failed = report.errors?.length ?? 0;
  const visit = (suite: PlaywrightSuite): void => {
    for (const { title, tests } of suite.specs ?? []) {
      for (const { status, annotations } of tests) {
        if (status === 'skipped') {
          const why = annotations.find(({ type }) => type === 'skip')?.description;
          skipped.push(why === undefined ? title : `${title} (${why})`);
        } else if (status === 'expected') passed += 1;
        else if (status === 'flaky') {
          passed += 1;
          late.push(title);
        } else failed += 1;
      }
    }
    for (const inner of suite.suites ?? []) visit(inner);
  };
  visit(report);
  return { passed, failed, skipped, late };
}
