import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { App } from 'electron';

/** The file of the kitchen to open: the one asked for, or else the one in the user's data folder. */
export function kitchenFile(app: Pick<App, 'getPath'>, asked: string | null): string {
  if (asked !== null) return asked;
  const folder = app.getPath('userData');
  // A request without a window may come before the program ever made its folder.
  mkdirSync(folder, { recursive: true });
  return join(folder, 'kitchen.sidejar');
}
