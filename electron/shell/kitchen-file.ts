import { join } from 'node:path';
import type { App } from 'electron';

/** The file of the kitchen to open: the one asked for, or else the one in the user's data folder. */
export function kitchenFile(app: Pick<App, 'getPath'>, asked: string | null): string {
  return asked ?? join(app.getPath('userData'), 'kitchen.sidejar');
}
