import { resolve } from 'node:path';
import { parseArgs } from 'node:util';

/** What was asked for behind `npm start --`. */
export interface StartWords {
  readonly serve: boolean;
  readonly port: number;
  readonly store: string | null;
  readonly fetchElectron: boolean;
}

export const startUsage = `npm start [-- options]
  --store FILE       open that kitchen
  --serve            no window: print an address to open
  --port N           the address's port (0, the default, takes any free one)
  --fetch-electron   try to fetch Electron's runtime again`;

const options = {
  serve: { type: 'boolean', default: false },
  port: { type: 'string', default: '0' },
  store: { type: 'string' },
  'fetch-electron': { type: 'boolean', default: false },
} as const;

/**
 * Reads the options of `npm start`; a problem is a sentence.
 *
 * @param folder where a relative --store is meant from
 */
export function readStartWords(words: readonly string[], folder: string): StartWords | { readonly problem: string } {
  let values: ReturnType<typeof parseArgs<{ options: typeof options }>>['values'];
  try {
    ({ values } = parseArgs({ args: [...words], options }));
  } catch (error) {
    return { problem: `${error instanceof Error ? error.message : 'The options can’t be read.'}\n${startUsage}` };
  }
  const port = Number(values.port);
  if (!/^\d+$/.test(values.port) || port > 65_535) {
    return { problem: `--port needs a whole number from 0 to 65535, not “${values.port}”.` };
  }
  if (values.store === '') return { problem: '--store needs a file, such as --store kitchen.sidejar.' };
  return {
    serve: values.serve,
    port,
    store: values.store === undefined ? null : resolve(folder, values.store),
    fetchElectron: values['fetch-electron'],
  };
}
