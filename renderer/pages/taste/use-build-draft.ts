import { useCallback, useEffect, useRef, useState } from 'react';
import { ask } from '#renderer/app/ask.ts';
import { keptDraft, type TastingDraft } from './tasting-draft.ts';

const settles_ms = 400;

export interface BuildDraft {
  /** Null while it is being read. */
  readonly draft: TastingDraft | null;
  readonly isKept: boolean;
  readonly change: (part: Partial<TastingDraft>) => void;
  /** Forgets what was chosen; with `begin`, a fresh one takes its place. */
  readonly forget: (begin: boolean) => Promise<void>;
}

/**
 * The half-built tasting: read once, kept a moment after each change, and at once when the page is left.
 *
 * @param name the draft's own
 * @param fresh what stands in the form when nothing is kept
 */
export function useBuildDraft(name: string, fresh: () => TastingDraft): BuildDraft {
  const [draft, setDraft] = useState<TastingDraft | null>(null);
  const [isKept, setIsKept] = useState(true);
  const unkept = useRef<TastingDraft | null>(null);
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const begin = useRef(fresh);
  begin.current = fresh;

  /** One after the other: what was chosen must not arrive after it was forgotten. */
  const line = useRef<Promise<unknown>>(Promise.resolve());
  const keep = useCallback(
    (body: TastingDraft | null) => {
      const kept = line.current.then(() => ask('drafts:keep', { name, body }));
      line.current = kept.catch(() => undefined);
      return kept;
    },
    [name],
  );

  const keepNow = useCallback(() => {
    clearTimeout(timer.current);
    const body = unkept.current;
    if (body === null) return;
    unkept.current = null;
    const isUntouched = JSON.stringify(body) === JSON.stringify(begin.current());
    keep(isUntouched ? null : body).then(
      () => setIsKept(true),
      () => setIsKept(false),
    );
  }, [keep]);

  useEffect(() => {
    let isHere = true;
    ask('drafts:open', { name })
      .then(({ draft: kept }) => keptDraft(kept?.body))
      .catch(() => null)
      .then((kept) => {
        if (isHere) setDraft((now) => now ?? kept ?? begin.current());
      });
    return () => {
      isHere = false;
    };
  }, [name]);

  useEffect(() => {
    window.addEventListener('pagehide', keepNow);
    return () => {
      window.removeEventListener('pagehide', keepNow);
      keepNow();
    };
  }, [keepNow]);

  const change = useCallback(
    (part: Partial<TastingDraft>) => {
      setDraft((now) => {
        if (now === null) return now;
        const next = { ...now, ...part };
        unkept.current = next;
        return next;
      });
      clearTimeout(timer.current);
      timer.current = setTimeout(keepNow, settles_ms);
    },
    [keepNow],
  );

  const forget = useCallback(
    async (isBegun: boolean) => {
      clearTimeout(timer.current);
      unkept.current = null;
      if (isBegun) setDraft(begin.current());
      await keep(null).catch(() => undefined);
    },
    [keep],
  );

  return { draft, isKept, change, forget };
}
