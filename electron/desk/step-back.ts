import { readlinkSync } from 'node:fs';
import { constants, setPriority } from 'node:os';

/**
 * Lets this thread give way to others, so that who waits for an answer is served before a backup's check.
 *
 * Method: on Linux a thread has a priority of its own, set by its number. Elsewhere nothing is done: there it would slow the whole program.
 */
export function stepBack(): void {
  if (process.platform !== 'linux') return;
  try {
    const thread = Number(readlinkSync('/proc/thread-self').split('/').at(-1));
    if (Number.isInteger(thread) && thread !== process.pid) setPriority(thread, constants.priority.PRIORITY_LOW);
  } catch {
    // Without it the work is done all the same.
  }
}
