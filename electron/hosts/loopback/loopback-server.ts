import { createReadStream } from 'node:fs';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { Socket } from 'node:net';
import { type Envelope, Failure } from '#shared/failure.ts';
import type { DeskLine } from '../desk-line.ts';
import { presentPageFile } from '../page-files.ts';
import { pagePolicy } from '../page-policy.ts';
import { readJson } from '../read-json.ts';
import { accessFor } from './access.ts';
import { eventStreams } from './event-streams.ts';
import { keyOf, pathOf, refusal } from './gatekeeper.ts';
import { readAsk, readStop, readTicket } from './messages.ts';

export interface LoopbackOptions {
  readonly line: DeskLine;
  /** The folder of the built page. */
  readonly page: string;
  /** Before this has come to pass no file of the page is read: it may still be built. */
  readonly built?: Promise<unknown>;
  /** 0 takes any free port. */
  readonly port: number;
  /** Called when the last window has been gone for `grace_ms`. */
  readonly onDeserted?: () => void;
  readonly grace_ms?: number;
  /** Called once, when a page has had its first answer. */
  readonly onReady?: () => void;
  /** How long a request may take to arrive: its headers, and all of it. */
  readonly patience?: { readonly headers_ms: number; readonly whole_ms: number };
}

/** Far more than a page needs on its own machine, where 48 MB arrive within a second. */
const patience = { headers_ms: 10_000, whole_ms: 30_000 };
/** Windows of one kitchen hold a handful each. */
const mostConnections = 128;

export interface Loopback {
  readonly port: number;
  /** A fresh address with a ticket that opens the page once. */
  address(): string;
  close(): Promise<void>;
}

function send(response: ServerResponse, status: number, body: unknown): void {
  const text = JSON.stringify(body);
  response.writeHead(status, {
    ...pagePolicy,
    'content-type': 'application/json; charset=utf-8',
    'content-length': Buffer.byteLength(text),
    'cache-control': 'no-store',
  });
  response.end(text);
}

function failed(code: 'not-allowed' | 'invalid-input', message: string): Envelope<never> {
  return { ok: false, error: { code, message } };
}

async function answer(
  request: IncomingMessage,
  response: ServerResponse,
  options: LoopbackOptions,
  door: Doors,
): Promise<void> {
  const path = pathOf(request);
  if (path === '/key') {
    const ticket = readTicket(await readJson(request, 4096));
    const key = ticket === null ? null : door.access.trade(ticket);
    send(
      response,
      key === null ? 403 : 200,
      key === null ? failed('not-allowed', 'This address was used already.') : { key },
    );
    return;
  }
  if (path !== '/ask' && path !== '/stop' && path !== '/events') {
    await options.built;
    sendFile(response, options.page, path);
    return;
  }
  if (!door.access.isKey(keyOf(request))) {
    response.setHeader('connection', 'close');
    send(response, 403, failed('not-allowed', 'This window has no key: open a fresh address.'));
    return;
  }
  if (path === '/events') {
    door.streams.open(response);
    return;
  }
  const body = await readJson(request);
  if (path === '/stop') {
    const stopped = readStop(body);
    if (stopped !== null) options.line.stop(stopped);
    send(response, 200, { ok: stopped !== null });
    return;
  }
  const message = readAsk(body);
  if (message === null) {
    send(response, 400, failed('invalid-input', 'A request needs ask, name and input.'));
    return;
  }
  const envelope = await options.line.ask(message);
  response.once('finish', door.firstAnswer);
  send(response, 200, envelope);
}

function sendFile(response: ServerResponse, root: string, path: string): void {
  const file = presentPageFile(root, path);
  if (file === null) {
    send(response, 404, failed('not-allowed', 'There is nothing here.'));
    return;
  }
  // Built files are named by their content and never change; the page itself is always asked for again.
  const cache = path.startsWith('/assets/') ? 'private, max-age=31536000, immutable' : 'no-store';
  response.writeHead(200, { ...pagePolicy, 'content-type': file.type, 'cache-control': cache });
  createReadStream(file.path)
    .on('error', () => response.destroy())
    .pipe(response);
}

interface Doors {
  readonly firstAnswer: () => void;
  readonly access: ReturnType<typeof accessFor>;
  readonly streams: ReturnType<typeof eventStreams>;
}

/** Serves the built page and the desk on 127.0.0.1 alone. Needs no name service and sets no cookie. */
export async function startLoopback(options: LoopbackOptions): Promise<Loopback> {
  const streams = eventStreams(options.line, {
    grace_ms: options.grace_ms ?? 5000,
    onDeserted: options.onDeserted ?? (() => {}),
  });
  let isReady = false;
  const firstAnswer = (): void => {
    if (!isReady) options.onReady?.();
    isReady = true;
  };
  const door: Doors = { access: accessFor(Date.now), streams, firstAnswer };
  let port = options.port;
  // Of a caller who was turned away nothing more is answered, also what came along in the same breath.
  const turnedAway = new WeakSet<Socket>();
  function respond(request: IncomingMessage, response: ServerResponse): void {
    if (turnedAway.has(request.socket)) return;
    const status = refusal(request, port);
    if (status !== null) {
      turnedAway.add(request.socket);
      response.setHeader('connection', 'close');
      send(response, status, failed('not-allowed', 'This address answers only the workbench’s own page.'));
      return;
    }
    answer(request, response, options, door).catch((error: unknown) => {
      if (response.headersSent) {
        response.destroy();
        return;
      }
      const failure = error instanceof Failure ? error : new Failure('internal', 'The request could not be read.');
      response.setHeader('connection', 'close');
      send(response, failure.code === 'too-large' ? 413 : 400, { ok: false, error: failure.report() });
    });
  }
  const { headers_ms, whole_ms } = options.patience ?? patience;
  const server = createServer(
    {
      headersTimeout: headers_ms,
      requestTimeout: whole_ms,
      connectionsCheckingInterval: Math.min(1000, headers_ms),
      keepAliveTimeout: 5000,
      maxHeaderSize: 16_384,
      // Said outright: a flag in the environment could relax it.
      insecureHTTPParser: false,
    },
    respond,
  );
  // "Expect: 100-continue" asks leave to send a body; it is refused like any other oddity.
  server.on('checkContinue', respond);
  server.on('checkExpectation', respond);
  server.maxConnections = mostConnections;
  server.maxRequestsPerSocket = 10_000;
  await new Promise<void>((resolve, reject) => {
    server.once('error', (error: NodeJS.ErrnoException) => {
      reject(
        error.code === 'EADDRINUSE'
          ? new Failure(
              'refused',
              `Port ${options.port} is taken; choose another with --port, or --port 0 for any free one.`,
            )
          : error,
      );
    });
    server.listen(options.port, '127.0.0.1', resolve);
  });
  const bound = server.address();
  if (bound === null || typeof bound === 'string') throw new Error('The server has no port.');
  port = bound.port;
  return {
    port,
    address: () => `http://127.0.0.1:${port}/#ticket=${door.access.issueTicket()}`,
    async close() {
      streams.close();
      server.closeAllConnections();
      await new Promise<void>((resolve) => server.close(() => resolve()));
    },
  };
}
