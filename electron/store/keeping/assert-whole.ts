import { Failure } from '#shared/failure.ts';
import { sqliteDriver } from '../sqlite-driver.ts';
import { sqliteFailure } from '../sqlite-failure.ts';

/**
 * Opens a copy and has SQLite look through all of it; the copy then stands alone, without a log beside it.
 *
 * @param sentence said when it is not whole
 * @throws Failure `store-damaged`
 */
export function assertWhole(copy: string, sentence: string): void {
  const Database = sqliteDriver();
  const check = new Database(copy, { fileMustExist: true });
  try {
    check.pragma('journal_mode = DELETE');
    // Each index is held against its table, which leaps through the whole file: with the usual 2 MB it reads most pages many times.
    check.pragma('cache_size = -262144');
    if (check.pragma('integrity_check', { simple: true }) !== 'ok') throw new Failure('store-damaged', sentence);
  } catch (error) {
    const failure = sqliteFailure(error);
    throw failure instanceof Failure && failure.code === 'store-damaged'
      ? new Failure('store-damaged', sentence)
      : failure;
  } finally {
    check.close();
  }
}
