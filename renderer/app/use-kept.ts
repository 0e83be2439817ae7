import { useQueryClient } from '@tanstack/react-query';
import { useCallback, useRef } from 'react';
import { ask } from './ask.ts';
import { useAnswer } from './use-answer.ts';
import { useSettling } from './use-settling.ts';

/** Small choices of a form, kept in the kitchen between its openings, outside history and undo. */
export interface Kept {
  readonly isPending: boolean;
  /** What was kept, as it was written; null when nothing was, or it can't be read. */
  readonly body: unknown;
  /** Keeps it a moment after the last change, and at once when the form is left. */
  readonly keep: (body: unknown) => void;
}

/**
 * What a form was last set to.
 *
 * @param name the form's own, such as `hydrometer`; what differs by thing carries its id
 */
export function useKept(name: string): Kept {
  const client = useQueryClient();
  const kept = useAnswer('drafts:open', { name });
  const unkept = useRef<{ readonly body: unknown } | null>(null);
  const keepNow = useCallback(() => {
    if (unkept.current === null) return;
    const { body } = unkept.current;
    unkept.current = null;
    // A choice that could not be kept is only chosen again next time.
    ask('drafts:keep', { name, body }).catch(() => undefined);
    client.setQueryData(['drafts:open', { name }], { draft: { body, keptAt: new Date().toISOString() } });
  }, [client, name]);
  const { soon } = useSettling(keepNow);
  const keep = useCallback(
    (body: unknown) => {
      unkept.current = { body };
      soon();
    },
    [soon],
  );
  return { isPending: kept.isPending, body: kept.data?.draft?.body ?? null, keep };
}
