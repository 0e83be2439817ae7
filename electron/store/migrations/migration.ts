import type { Sqlite } from '../sqlite-driver.ts';

/** One step of the schema. Numbered in tens; its number becomes the file's `user_version` in the same transaction. */
export interface Migration {
  readonly number: number;
  readonly title: string;
  apply(db: Sqlite): void;
}
