import { parentPort, workerData } from 'node:worker_threads';
import { type Envelope, Failure } from '#shared/failure.ts';
import { openKitchen } from '#store/open-kitchen.ts';
import { type Desk, deskOf } from './desk.ts';
import { failureReport } from './failure-report.ts';
import type { FromDesk, ToDesk } from './worker-messages.ts';

// The desk's thread: opens the kitchen once, then answers requests in the order they come.

const port = parentPort;
if (port === null) throw new Error('The desk runs as a worker thread.');
const { store } = workerData as { store: string };

function post(message: FromDesk): void {
  port?.postMessage(message);
}

/** A kitchen that can't be opened still answers: every request settles with the reason. */
async function openDesk(): Promise<Desk | Envelope<never>> {
  try {
    const kitchen = await openKitchen(store);
    kitchen.onChange(({ step, tables }) => post({ kind: 'changed', step, tables }));
    return deskOf(kitchen);
  } catch (error) {
    return { ok: false, error: failureReport(error) };
  }
}

const opened = openDesk();

async function answer(message: Extract<ToDesk, { kind: 'ask' }>): Promise<void> {
  const desk = await opened;
  const envelope =
    'handle' in desk
      ? await desk.handle(message.name, message.input, {
          progress: (done, total) => post({ kind: 'progress', ask: message.ask, done, total }),
          assertGoing() {
            if (Atomics.load(message.stopFlag, 0) === 1) throw new Failure('stopped', 'Stopped. Nothing was changed.');
          },
        })
      : desk;
  post({ kind: 'settled', ask: message.ask, envelope });
}

port.on('message', async (message: ToDesk) => {
  if (message.kind === 'ask') {
    await answer(message);
    return;
  }
  const desk = await opened;
  if ('close' in desk) desk.close();
  port.close();
});
