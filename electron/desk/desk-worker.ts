import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { parentPort, workerData } from 'node:worker_threads';
import { layDecimalMark } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { openKitchen } from '#store/open-kitchen.ts';
import { sqliteFailure } from '#store/sqlite-failure.ts';
import { deskOf } from './desk.ts';
import { lookForKitchensIn } from './kitchen/near-kitchens.ts';
import { noteMistake, noteMistakesIn } from './mistake-log.ts';
import { stepBack } from './step-back.ts';
import { speak } from './tongue/tongue.ts';
import { lookForWordsIn } from './tongue/translation-files.ts';
import type { DeskData, FromDesk, ToDesk } from './worker-messages.ts';

// The desk's thread: opens the kitchen when one is needed, and answers requests in the order they come.

const port = parentPort;
if (port === null) throw new Error('The desk runs as a worker thread.');
const { store, makes, log, ownWords, near, hasDialog, stepsBack } = workerData as DeskData;
if (stepsBack) stepBack();
if (log !== null) noteMistakesIn(log);
// Built, the program's words lie beside this file; from source, at the top of the checkout.
const builtWords = join(import.meta.dirname, 'words');
lookForWordsIn(existsSync(builtWords) ? builtWords : join(import.meta.dirname, '..', '..', 'words'), ownWords);
lookForKitchensIn(near, hasDialog);

function post(message: FromDesk): void {
  port?.postMessage(message);
}

/** How often a look is taken whether another program or window wrote: it costs a few microseconds. */
const looksEvery_ms = 400;

async function opening(writes: boolean): Promise<Kitchen> {
  const kitchen = await openKitchen(store, { mayMake: writes || makes === 'any' });
  kitchen.onChange(({ step, tables }) => post({ kind: 'changed', step, tables }));
  setInterval(() => {
    try {
      if (kitchen.db.open) kitchen.lookForOthers();
    } catch (error) {
      // A disk that does not answer is told by the next request, which somebody waits for.
      if (!(sqliteFailure(error) instanceof Failure)) throw error;
    }
  }, looksEvery_ms).unref();
  return kitchen;
}

const desk = deskOf(opening, { onMistake: (error, request) => noteMistake(error, new Date(), request) });

async function answer(message: Extract<ToDesk, { kind: 'ask' }>): Promise<void> {
  layDecimalMark(message.ways?.decimal ?? '.');
  speak(message.ways?.language ?? 'en');
  const envelope = await desk.handle(message.name, message.input, {
    progress: (done, total, work) =>
      post({ kind: 'progress', ask: message.ask, done, total, ...(work === undefined ? {} : { work }) }),
    assertGoing() {
      if (Atomics.load(message.stopFlag, 0) === 1) throw new Failure('stopped', phrase`Stopped. Nothing was changed.`);
    },
  });
  post({ kind: 'settled', ask: message.ask, envelope });
}

// One after the other: two requests that come before the kitchen is open must not open it twice, and each is answered in the words and
// figures that it asks for.
let last = Promise.resolve();

port.on('message', (message: ToDesk) => {
  last = last.then(async () => {
    if (message.kind === 'ask') {
      await answer(message);
    } else {
      desk.close();
      port.close();
    }
  });
});
