import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

/** Where the parts of the built program lie. */
export interface BuiltFiles {
  /** Folder of the page, with its index.html. */
  readonly page: string;
  readonly preload: string;
  readonly worker: URL;
}

/**
 * The parts of the built program, beside its main file.
 *
 * @param folder where main.js lies
 */
export function builtFiles(folder: string): BuiltFiles {
  return {
    page: join(folder, 'page'),
    preload: join(folder, 'preload.cjs'),
    worker: pathToFileURL(join(folder, 'desk-worker.js')),
  };
}
