import type { ServerResponse } from 'node:http';
import type { DeskEvent } from '#shared/carriage.ts';
import type { DeskLine } from '../desk-line.ts';
import { pagePolicy } from '../page-policy.ts';

export interface EventStreamOptions {
  /** How long the last window may be away (a reload) before it counts as closed. */
  readonly grace_ms: number;
  readonly onDeserted: () => void;
}

const mostUnread_bytes = 1024 * 1024;

/** The open windows' event streams (server-sent events, WHATWG HTML section 9.2). */
export function eventStreams(line: DeskLine, { grace_ms, onDeserted }: EventStreamOptions) {
  const open = new Set<ServerResponse>();
  function tell(text: string): void {
    for (const response of open) {
      // A window that does not read would have its news pile up here; it connects again and reads all anew.
      if (response.writableLength > mostUnread_bytes) response.destroy();
      else response.write(text);
    }
  }
  let leaving: NodeJS.Timeout | undefined;
  const forget = line.listen((event: DeskEvent) => {
    tell(`data: ${JSON.stringify(event)}\n\n`);
  });
  // A line now and then, so that a dead connection is noticed.
  const pulse = setInterval(() => {
    tell(':\n\n');
  }, 15_000);
  pulse.unref();

  return {
    open(response: ServerResponse): void {
      clearTimeout(leaving);
      response.writeHead(200, {
        ...pagePolicy,
        'content-type': 'text/event-stream; charset=utf-8',
        'cache-control': 'no-store',
      });
      response.write(':\n\n');
      open.add(response);
      response.on('close', () => {
        open.delete(response);
        if (open.size === 0) leaving = setTimeout(onDeserted, grace_ms);
      });
    },
    close(): void {
      forget();
      clearInterval(pulse);
      clearTimeout(leaving);
      for (const response of open) {
        response.removeAllListeners('close');
        response.end();
      }
    },
  };
}
