import { phrase } from '#core/words/phrase.ts';
import { Failure, type FailureReport } from '#shared/failure.ts';
import { sqliteFailure } from '#store/sqlite-failure.ts';

/** What the caller is told of an error: its own sentence when it is a failure, else that it is our mistake. Never a stack. */
export function failureReport(error: unknown): FailureReport {
  const known = sqliteFailure(error);
  if (known instanceof Failure) return known.report();
  return {
    code: 'internal',
    message: phrase`The workbench made a mistake here; nothing was changed. Please report what you did.`,
  };
}
