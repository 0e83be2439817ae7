import { connect } from 'node:net';

/** What came back on a socket: the first answer's status (0 for none), everything as text, and how long it stayed open. */
export interface RawAnswer {
  readonly status: number;
  readonly text: string;
  readonly answers: number;
  readonly open_ms: number;
}

/** A first answer may be late on a busy machine; it is late, not missing. */
const firstAnswer_ms = 5000;

/**
 * Writes bytes to a socket as they are, and reads until the other side closes or `wait_ms` have passed since the first answer.
 *
 * @param drip written again every 20 ms after the first bytes, for callers that never end
 */
export function rawRequest(
  port: number,
  bytes: string,
  { wait_ms = 400, drip }: { wait_ms?: number; drip?: string } = {},
): Promise<RawAnswer> {
  return new Promise((resolve) => {
    const begun = performance.now();
    let text = '';
    const socket = connect({ host: '127.0.0.1', port });
    const dripping = setInterval(() => {
      if (drip !== undefined && socket.writable) socket.write(drip);
    }, 20);
    let limit = setTimeout(() => socket.destroy(), Math.max(wait_ms, firstAnswer_ms));
    socket.on('data', (part) => {
      if (text === '') {
        clearTimeout(limit);
        limit = setTimeout(() => socket.destroy(), wait_ms);
      }
      text += part.toString('latin1');
    });
    // A reset is a way of closing, too.
    socket.on('error', () => {});
    socket.on('close', () => {
      clearInterval(dripping);
      clearTimeout(limit);
      const heads = [...text.matchAll(/HTTP\/1\.1 (\d{3})/g)];
      resolve({
        status: Number(heads[0]?.[1] ?? 0),
        text,
        answers: heads.length,
        open_ms: performance.now() - begun,
      });
    });
    socket.write(bytes);
  });
}
