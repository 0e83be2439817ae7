import { createRequire } from 'node:module';
import type DatabaseConstructor from 'better-sqlite3';
import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';

export type Sqlite = DatabaseConstructor.Database;
export type Statement<Values extends unknown[]> = DatabaseConstructor.Statement<Values>;

const oldestNode = 22;

/**
 * Loads better-sqlite3, but never on a Node that is too old for it: there it would end the process without a word.
 *
 * @throws Failure `node-too-old` with what to do about it
 */
export function sqliteDriver(nodeVersion: string = process.versions.node): typeof DatabaseConstructor {
  const major = Number.parseInt(nodeVersion, 10);
  if (!(major >= oldestNode)) {
    throw new Failure(
      'node-too-old',
      phrase`The store needs Node ${oldestNode} or newer; this is Node ${nodeVersion}. Start the workbench with "npm start", which brings its own.`,
    );
  }
  const load = createRequire(import.meta.url);
  return load('better-sqlite3') as typeof DatabaseConstructor;
}
