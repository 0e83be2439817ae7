import { useQueryClient } from '@tanstack/react-query';
import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { afterPaint } from '#renderer/app/after-paint.ts';
import { ask } from '#renderer/app/ask.ts';
import { useToasts } from '#renderer/parts/toast/toasts.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { cellText, readCell } from './cell-text.ts';
import { placeFaults, type RankedCup } from './place-faults.ts';
import { cupsOf, type Ranking, rankedChanges } from './ranked-changes.ts';
import type { Attribute, GridCell } from './score-cell.tsx';
import { type ScoreQueue, scoreQueue } from './score-queue.ts';
import type { SheetRow } from './sheet-progress.ts';
import { keyOf, type Scores, type SheetScore, scoresByKey, withKept } from './sheet-scores.ts';
import { words } from './words.ts';

/** Typing that pauses this long is kept without waiting for a move. */
const pause_ms = 700;
/** Typing that rests this long is over for the moment. */
const rests_ms = 1500;

export interface Sheet {
  readonly cell: (row: SheetRow, attribute: Attribute) => GridCell;
  readonly type: (row: SheetRow, attribute: Attribute, text: string) => void;
  readonly leave: (row: SheetRow, attribute: Attribute) => void;
  /** What stands at each cup of a ranking. */
  readonly cups: readonly RankedCup[];
  readonly kept: number;
  readonly waiting: number;
  readonly notKept: number;
  readonly retry: () => void;
  /** Resolves when everything typed so far is kept or refused. */
  readonly settled: () => Promise<void>;
}

/** One taster's sheet: what is stored, with what is being typed on top of it, kept as it is typed. */
export function useSheet(tasting: string, taster: string, stored: Scores, ranking: Ranking | null = null): Sheet {
  const client = useQueryClient();
  const { say } = useToasts();
  const isHere = useRef(true);
  const [texts, setTexts] = useState<ReadonlyMap<string, string>>(new Map());
  const newest = useRef(texts);
  const [, setTurn] = useState(0);
  const pending = useRef<{ key: string; timer: ReturnType<typeof setTimeout>; put: () => void } | null>(null);

  const change = useCallback((edit: (all: Map<string, string>) => void) => {
    const next = new Map(newest.current);
    edit(next);
    newest.current = next;
    setTexts(next);
  }, []);

  const byKey = useMemo(() => scoresByKey(stored, taster), [stored, taster]);
  const held = useRef(byKey);
  held.current = byKey;
  /** What a ranking has sent and not seen kept: it counts as stored when a neighbour is judged. */
  const onItsWay = useRef(new Map<string, number | null>());

  const again = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  /** Also without an event, whose line may be down; once the typing rests, for each answer costs the keys that come meanwhile. */
  const readAgainSoon = useCallback(() => {
    clearTimeout(again.current);
    again.current = setTimeout(() => void client.invalidateQueries(), rests_ms);
  }, [client]);

  const queue = useMemo(() => {
    const made: ScoreQueue<SheetScore> = scoreQueue<SheetScore>({
      breath: afterPaint,
      async send(scores) {
        await ask('scores:enter', {
          tasting,
          // The sheet keeps double places out itself, cup by cup: on their way two cups may hold one place for a moment.
          ties: true,
          scores: scores.map(({ sample, attribute, replicate, score }) => ({
            taster,
            sample,
            attribute,
            replicate,
            score,
          })),
        });
      },
      onKept(scores) {
        const queryKey = ['scores:list', { tasting }];
        // An older answer on its way must not take the place of what was just kept.
        void client.cancelQueries({ queryKey }).then(() => {
          client.setQueryData<ValueOf<'scores:list'>>(queryKey, (before) =>
            before === undefined ? before : { scores: withKept(before.scores, taster, scores) },
          );
          const now = new Map(held.current);
          for (const { key, score } of scores) {
            if (score === null) now.delete(key);
            else now.set(key, score);
            if (onItsWay.current.get(key) === score) onItsWay.current.delete(key);
          }
          held.current = now;
          change((all) => {
            for (const { key, text } of scores) if (all.get(key) === text) all.delete(key);
          });
          readAgainSoon();
        });
      },
      onChange() {
        setTurn((turn) => turn + 1);
        // The cell is gone with its sheet: what could not be kept is said at the page's edge.
        if (!isHere.current && made.faults > 0 && made.waiting === 0) {
          say({ kind: 'fault', words: words.leftUnkept(taster, made.faults) });
        }
      },
    });
    return made;
  }, [tasting, taster, client, change, say, readAgainSoon]);

  const putPending = useCallback(() => {
    const waits = pending.current;
    if (waits === null) return;
    clearTimeout(waits.timer);
    pending.current = null;
    waits.put();
  }, []);

  useEffect(() => {
    // Whoever leaves the sheet, or the window, leaves nothing behind.
    isHere.current = true;
    window.addEventListener('pagehide', putPending);
    return () => {
      isHere.current = false;
      window.removeEventListener('pagehide', putPending);
      putPending();
    };
  }, [putPending]);

  const ranked = useRef(ranking);
  ranked.current = ranking;
  const putRanking = useCallback(() => {
    const now = ranked.current;
    if (now === null) return;
    const sent = (key: string) => (queue.faultOf(key) === undefined ? onItsWay.current.get(key) : undefined);
    for (const each of rankedChanges(now, newest.current, held.current, sent)) {
      if (each.kind === 'let-go') change((all) => all.delete(each.key));
      else {
        onItsWay.current.set(each.score.key, each.score.score);
        queue.put(each.score);
      }
    }
  }, [queue, change]);

  const areTiesMeant = ranking?.areTiesMeant ?? false;
  // biome-ignore lint/correctness/useExhaustiveDependencies: what was a double place may be a shared one now
  useEffect(putRanking, [areTiesMeant]);

  const put = useCallback(
    (row: SheetRow, attribute: Attribute) => {
      if (ranked.current !== null) {
        putRanking();
        return;
      }
      const key = keyOf(row, attribute);
      const text = newest.current.get(key);
      if (text === undefined) return;
      const reading = readCell(text, attribute);
      if (reading.kind === 'fault') return;
      const score = reading.kind === 'none' ? null : reading.score;
      if (score === (held.current.get(key) ?? null) && !queue.isWaiting(key)) {
        change((all) => all.delete(key));
        return;
      }
      queue.put({ key, score, text, sample: row.code, attribute: attribute.name, replicate: row.replicate });
    },
    [queue, change, putRanking],
  );

  const cups = ranking === null ? [] : cupsOf(ranking, texts, byKey);
  const faults = ranking === null ? [] : placeFaults(cups, ranking.attribute, ranking.areTiesMeant);
  /** Why what stands in a cell can't be kept as it is. */
  function cellFault(key: string, row: SheetRow, attribute: Attribute, text: string): string | undefined {
    const at = ranking?.rows.findIndex((one) => keyOf(one, attribute) === keyOf(row, attribute)) ?? -1;
    if (at >= 0) return faults[at] ?? queue.faultOf(key);
    const reading = readCell(text, attribute);
    return reading.kind === 'fault' ? reading.message : queue.faultOf(key);
  }

  return {
    cell(row, attribute) {
      const key = keyOf(row, attribute);
      const text = texts.get(key);
      const score = byKey.get(key);
      if (text === undefined) {
        if (score === undefined) return { text: '', state: 'empty' };
        const shown = cellText(attribute, score);
        return { text: shown, state: 'kept', fault: cellFault(key, row, attribute, shown) };
      }
      const fault = cellFault(key, row, attribute, text);
      return { text, state: text === '' && score === undefined ? 'empty' : 'typed', fault };
    },
    type(row, attribute, text) {
      const key = keyOf(row, attribute);
      if (pending.current !== null && pending.current.key !== key) putPending();
      if (pending.current !== null) clearTimeout(pending.current.timer);
      queue.forget(key);
      change((all) => all.set(key, text));
      pending.current = { key, timer: setTimeout(putPending, pause_ms), put: () => put(row, attribute) };
    },
    leave(row, attribute) {
      if (pending.current?.key === keyOf(row, attribute)) putPending();
    },
    cups,
    kept: byKey.size,
    waiting: queue.waiting,
    notKept: queue.faults,
    retry: queue.retry,
    settled() {
      putPending();
      return queue.settled();
    },
  };
}
