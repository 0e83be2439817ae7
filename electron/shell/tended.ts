import { Notification } from 'electron';
import { phrase } from '#core/words/phrase.ts';
import type { Envelope } from '#shared/failure.ts';

/** A backup of the day that was not made is said at once: nobody should find out when it is needed. */
export function tended(envelope: Envelope<unknown>): void {
  if (envelope.ok || !Notification.isSupported()) return;
  new Notification({ title: phrase`The daily backup was not made`, body: envelope.error.message }).show();
}
