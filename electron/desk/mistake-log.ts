import { appendFileSync, readFileSync, renameSync, statSync } from 'node:fs';
import { basename } from 'node:path';
import { fileURLToPath } from 'node:url';

// One log file of our own mistakes. It holds no names, texts, figures or folders of anybody: an error's kind and where in the program it
// arose, no more. A message may quote what a person wrote, so messages stay out.

const largest_bytes = 200_000;

let place: string | null = null;

/** Says where mistakes are noted from now on; before that they are noted nowhere. */
export function noteMistakesIn(file: string): void {
  place = file;
}

function fileName(path: string): string {
  return basename(path.startsWith('file:') ? fileURLToPath(path) : path);
}

/** The frames of a stack as file, line and column, without folders. */
function framesOf(stack: string): string[] {
  return stack
    .split('\n')
    .flatMap((line) => {
      const found = /^\s*at (?:(?:async )?([\w.<>[\] ]+) \()?(.+?):(\d+):(\d+)\)?$/.exec(line);
      if (found === null) return [];
      const [, name = '', path = '', row = '', column = ''] = found;
      return [`  ${fileName(path)}:${row}:${column}${name === '' ? '' : ` ${name}`}`];
    })
    .slice(0, 12);
}

/** A mistake as the log tells it. */
export function mistakeWords(error: unknown, at: Date, request: string): string {
  const isError = error instanceof Error;
  const code = isError && 'code' in error && /^[A-Z_0-9]+$/.test(String(error.code)) ? ` ${String(error.code)}` : '';
  const head = `${at.toISOString()} ${request}: ${isError ? error.name : typeof error}${code}`;
  return [head, ...(isError ? framesOf(error.stack ?? '') : [])].join('\n');
}

/** Notes a mistake. A log that can't be written must not be a second one. */
export function noteMistake(error: unknown, at: Date, request: string): void {
  if (place === null) return;
  try {
    const size = statSync(place, { throwIfNoEntry: false })?.size ?? 0;
    if (size > largest_bytes) renameSync(place, `${place}.old`);
    appendFileSync(place, `${mistakeWords(error, at, request)}\n`);
  } catch {
    // A full or read-only disk costs only the note.
  }
}

/** The last lines of the log; empty when nothing was ever noted. */
export function lastMistakes(lines: number): string {
  if (place === null) return '';
  try {
    return readFileSync(place, 'utf8').trimEnd().split('\n').slice(-lines).join('\n');
  } catch {
    return '';
  }
}
