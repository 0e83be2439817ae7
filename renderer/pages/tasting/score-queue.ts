import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';

/** A score on its way to the desk; null takes one back. */
export interface QueuedScore {
  readonly key: string;
  readonly score: number | null;
}

interface QueueOptions<Score extends QueuedScore> {
  /** Keeps these; rejects with a Failure, whose path names the one at fault where one is. */
  readonly send: (scores: readonly Score[]) => Promise<void>;
  /** Told after it is true. */
  readonly onKept: (scores: readonly Score[]) => void;
  readonly onChange: () => void;
  /** What is waited for before each sending: typing that shows. */
  readonly breath?: () => Promise<void>;
}

export interface ScoreQueue<Score extends QueuedScore> {
  put(score: Score): void;
  /** Sends again what could not be kept. */
  retry(): void;
  /** Forgets what could not be kept of one cell, because something else is typed there. */
  forget(key: string): void;
  isWaiting(key: string): boolean;
  faultOf(key: string): string | undefined;
  readonly waiting: number;
  readonly faults: number;
  /** Resolves when nothing is on its way. */
  settled(): Promise<void>;
}

/** Keeps scores one request after the other while typing goes on; of each cell only the newest is sent. */
export function scoreQueue<Score extends QueuedScore>({
  send,
  onKept,
  onChange,
  breath,
}: QueueOptions<Score>): ScoreQueue<Score> {
  const waiting = new Map<string, Score>();
  const faults = new Map<string, { score: Score; message: string }>();
  let sending: readonly Score[] = [];
  let work: Promise<void> = Promise.resolve();

  function refuse(scores: readonly Score[], message: string): void {
    for (const score of scores) if (!waiting.has(score.key)) faults.set(score.key, { score, message });
  }

  function takeFailure(batch: readonly Score[], error: unknown): void {
    const message = error instanceof Failure ? error.message : phrase`That could not be kept.`;
    const place = error instanceof Failure && error.path?.[0] === 'scores' ? error.path[1] : undefined;
    const culprit = typeof place === 'number' ? batch[place] : undefined;
    if (culprit === undefined) {
      refuse(batch, message);
      return;
    }
    refuse([culprit], message);
    // Nothing of the batch was kept: the others go again.
    for (const score of batch) if (score !== culprit && !waiting.has(score.key)) waiting.set(score.key, score);
  }

  async function run(): Promise<void> {
    while (waiting.size > 0) {
      if (breath !== undefined) await breath();
      sending = [...waiting.values()];
      waiting.clear();
      const batch = sending;
      try {
        await send(batch);
        sending = [];
        onKept(batch);
      } catch (error) {
        sending = [];
        takeFailure(batch, error);
      }
      onChange();
    }
  }

  let isRunning = false;
  function start(): void {
    if (isRunning) return;
    isRunning = true;
    work = run().finally(() => {
      isRunning = false;
    });
  }

  return {
    put(score) {
      faults.delete(score.key);
      waiting.set(score.key, score);
      start();
      onChange();
    },
    retry() {
      for (const { score } of faults.values()) waiting.set(score.key, score);
      faults.clear();
      start();
      onChange();
    },
    forget(key) {
      if (faults.delete(key)) onChange();
    },
    isWaiting: (key) => waiting.has(key) || sending.some((score) => score.key === key),
    faultOf: (key) => faults.get(key)?.message,
    get waiting() {
      return waiting.size + sending.length;
    },
    get faults() {
      return faults.size;
    },
    settled: () => work,
  };
}
