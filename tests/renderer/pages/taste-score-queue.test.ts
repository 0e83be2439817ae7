import { describe, expect, it } from 'vitest';
import { type QueuedScore, scoreQueue } from '#renderer/pages/tasting/score-queue.ts';
import { Failure } from '#shared/failure.ts';

/** A queue over a desk that answers when told. */
function bench() {
  const sent: { scores: readonly QueuedScore[]; keep: () => void; refuse: (failure: unknown) => void }[] = [];
  const kept: QueuedScore[] = [];
  const queue = scoreQueue<QueuedScore>({
    send: (scores) =>
      new Promise((resolve, reject) => {
        sent.push({ scores, keep: resolve, refuse: reject });
      }),
    onKept: (scores) => kept.push(...scores),
    onChange() {},
  });
  const at = (place: number) => {
    const one = sent[place];
    if (one === undefined) throw new Error(`Nothing was sent as number ${place}.`);
    return one;
  };
  return { queue, sent, kept, at };
}

const turn = () => new Promise((resolve) => setTimeout(resolve, 0));

describe('scoreQueue', () => {
  it('sends one request at a time, and of each cell only the newest', async () => {
    const { queue, sent, kept, at } = bench();
    queue.put({ key: 'a', score: 1 });
    queue.put({ key: 'b', score: 5 });
    queue.put({ key: 'b', score: 6 });
    queue.put({ key: 'c', score: null });
    expect(sent).toHaveLength(1);
    expect(kept).toEqual([]);
    at(0).keep();
    await turn();
    expect(kept).toEqual([{ key: 'a', score: 1 }]);
    expect(at(1).scores).toEqual([
      { key: 'b', score: 6 },
      { key: 'c', score: null },
    ]);
    expect(queue.waiting).toBe(2);
    at(1).keep();
    await queue.settled();
    expect(queue.waiting).toBe(0);
    expect(kept).toHaveLength(3);
  });

  it('sends nothing before it has drawn breath, and then the newest', async () => {
    const breath = Promise.withResolvers<void>();
    const sent: (readonly QueuedScore[])[] = [];
    const queue = scoreQueue<QueuedScore>({
      breath: () => breath.promise,
      async send(scores) {
        sent.push(scores);
      },
      onKept() {},
      onChange() {},
    });
    queue.put({ key: 'a', score: 1 });
    await turn();
    queue.put({ key: 'a', score: 2 });
    expect(sent).toEqual([]);
    expect(queue.waiting).toBe(1);
    breath.resolve();
    await queue.settled();
    expect(sent).toEqual([[{ key: 'a', score: 2 }]]);
  });

  it('shows a refused score at its own cell, and sends the others again', async () => {
    const { queue, kept, at } = bench();
    queue.put({ key: 'a', score: 1 });
    queue.put({ key: 'b', score: 99 });
    queue.put({ key: 'c', score: 3 });
    at(0).keep();
    await turn();
    at(1).refuse(new Failure('invalid-input', 'outside', ['scores', 0, 'score']));
    await turn();
    expect(queue.faultOf('b')).toBe('outside');
    expect(at(2).scores).toEqual([{ key: 'c', score: 3 }]);
    at(2).keep();
    await queue.settled();
    expect(kept.map(({ key }) => key)).toEqual(['a', 'c']);
    expect(queue.faults).toBe(1);
  });

  it('keeps hold of scores that the store could not take, and sends them again when asked', async () => {
    const { queue, kept, at } = bench();
    queue.put({ key: 'a', score: 1 });
    at(0).refuse(new Failure('store-full', 'The disk is full.'));
    await queue.settled();
    expect(queue.faultOf('a')).toBe('The disk is full.');
    expect(kept).toEqual([]);
    queue.retry();
    expect(queue.faultOf('a')).toBeUndefined();
    at(1).keep();
    await queue.settled();
    expect(kept).toEqual([{ key: 'a', score: 1 }]);
  });

  it('lets a newer score of a cell stand before an older one that failed', async () => {
    const { queue, at } = bench();
    queue.put({ key: 'a', score: 1 });
    queue.put({ key: 'a', score: 2 });
    at(0).refuse(new Failure('store-locked', 'busy'));
    await turn();
    expect(queue.faultOf('a')).toBeUndefined();
    expect(at(1).scores).toEqual([{ key: 'a', score: 2 }]);
  });
});
