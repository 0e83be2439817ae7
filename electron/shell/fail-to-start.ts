import { app, dialog } from 'electron';
import { phrase } from '#core/words/phrase.ts';

/** Says on standard error what is wrong with the command line, and ends. */
export function sayAndEnd(problem: string): void {
  process.stderr.write(`${problem}\n`);
  app.exit(1);
}

/** Says in a dialog why the workbench can't open, and ends. */
export function failToStart(error: unknown): void {
  dialog.showErrorBox(phrase`Sidejar could not start`, error instanceof Error ? error.message : String(error));
  app.exit(1);
}
