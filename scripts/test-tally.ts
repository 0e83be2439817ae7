import { relative } from 'node:path';

/** What a test runner counted. `skipped` names each skipped test with its reason, `failed` each failed one with what it said. */
export interface Tally {
  readonly passed: number;
  readonly failed: readonly string[];
  readonly skipped: readonly string[];
  /** Passed only at the second try. */
  readonly late?: readonly string[];
}

interface VitestReport {
  numPassedTests: number;
  testResults: {
    name: string;
    status: string;
    message?: string;
    assertionResults: { status: string; fullName: string; failureMessages?: string[] }[];
  }[];
}

const colours = new RegExp(`${String.fromCharCode(27)}\\[[0-9;]*m`, 'g');

/** A failure in few enough lines to stand again at the end of a long run. */
function told(name: string, message: string | undefined): string {
  const lines = (message ?? '').replace(colours, '').split('\n');
  const few = lines.map((line) => line.trim()).filter((line) => line !== '');
  return few.length === 0 ? name : [name, ...few.slice(0, 8)].join('\n    ');
}

/** Counts Vitest's JSON report; a file that could not be loaded counts as one failure. */
export function countVitest(text: string): Tally {
  const report = JSON.parse(text) as VitestReport;
  const failed: string[] = [];
  const skipped: string[] = [];
  for (const { name, status, message, assertionResults } of report.testResults) {
    const file = relative(process.cwd(), name);
    const broken = assertionResults.filter((each) => each.status === 'failed');
    for (const { fullName, failureMessages } of broken) failed.push(told(`${file}: ${fullName}`, failureMessages?.[0]));
    if (status === 'failed' && broken.length === 0) failed.push(told(file, message));
    const unread = assertionResults.filter((each) => each.status !== 'passed' && each.status !== 'failed');
    skipped.push(...unread.map(({ fullName }) => fullName));
  }
  return { passed: report.numPassedTests, failed, skipped };
}

interface PlaywrightError {
  message?: string;
}

interface PlaywrightSuite {
  suites?: PlaywrightSuite[];
  specs?: {
    title: string;
    tests: {
      status: string;
      annotations: { type: string; description?: string }[];
      results?: { error?: PlaywrightError }[];
    }[];
  }[];
}

/** Counts Playwright's JSON report. */
export function countPlaywright(text: string): Tally {
  const report = JSON.parse(text) as PlaywrightSuite & { errors?: PlaywrightError[] };
  const failed = (report.errors ?? []).map(({ message }) => told('outside the tests', message));
  const skipped: string[] = [];
  const late: string[] = [];
  let passed = 0;
  const visit = (suite: PlaywrightSuite): void => {
    for (const { title, tests } of suite.specs ?? []) {
      for (const { status, annotations, results } of tests) {
        if (status === 'skipped') {
          const why = annotations.find(({ type }) => type === 'skip')?.description;
          skipped.push(why === undefined ? title : `${title} (${why})`);
        } else if (status === 'expected') passed += 1;
        else if (status === 'flaky') {
          passed += 1;
          late.push(told(title, results?.[0]?.error?.message));
        } else failed.push(told(title, results?.at(-1)?.error?.message));
      }
    }
    for (const inner of suite.suites ?? []) visit(inner);
  };
  visit(report);
  return { passed, failed, skipped, late };
}
