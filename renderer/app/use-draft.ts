import { useCallback, useEffect, useRef, useState } from 'react';
import { ask } from './ask.ts';
import { pageIsGoing } from './leaving.ts';
import { useSettling } from './use-settling.ts';

/** How a form's draft is read, begun and judged. */
export interface DraftKind<Draft> {
  /** The draft's own, under which the kitchen keeps it. */
  readonly name: string;
  /** What the kitchen kept; null where that is no such draft. */
  readonly read: (body: unknown) => Draft | null;
  /** What stands in the form when nothing is kept. */
  readonly begin: () => Draft;
  /** Nothing was written in it that is worth keeping. */
  readonly isUntouched: (draft: Draft) => boolean;
}

export interface HeldDraft<Draft> {
  /** Null while it is being read. */
  readonly draft: Draft | null;
  /** Whether the last change is kept, or on its way. */
  readonly isKept: boolean;
  readonly change: (step: (draft: Draft) => Draft) => void;
  /** Forgets what was written; with `begin`, an empty draft takes its place. */
  readonly forget: (begin: boolean) => Promise<void>;
}

/**
 * What is half done in a form: read once, kept a moment after each change, and at once when the page is left.
 *
 * @param kind null while what it begins with is not known yet
 */
export function useDraft<Draft>(kind: DraftKind<Draft> | null): HeldDraft<Draft> {
  const [draft, setDraft] = useState<Draft | null>(null);
  const [isKept, setIsKept] = useState(true);
  const unkept = useRef<Draft | null>(null);
  const latest = useRef(kind);
  latest.current = kind ?? latest.current;
  const name = kind?.name;

  /** One after the other: what was written must not arrive after it was forgotten. */
  const line = useRef<Promise<unknown>>(Promise.resolve());
  const keep = useCallback((body: Draft | null): Promise<unknown> => {
    const { name: keptAs } = latest.current ?? {};
    if (keptAs === undefined) return Promise.resolve();
    const send = () => ask('drafts:keep', { name: keptAs, body });
    const kept = pageIsGoing() ? send() : line.current.then(send);
    line.current = kept.catch(() => undefined);
    return kept;
  }, []);

  const keepNow = useCallback(() => {
    const body = unkept.current;
    if (body === null) return;
    unkept.current = null;
    keep(latest.current?.isUntouched(body) === true ? null : body).then(
      () => setIsKept(true),
      () => {
        // It goes again with the next change, or when the page is left.
        unkept.current ??= body;
        setIsKept(false);
      },
    );
  }, [keep]);

  useEffect(() => {
    if (name === undefined) return;
    let isHere = true;
    ask('drafts:open', { name })
      .then(({ draft: kept }) => latest.current?.read(kept?.body) ?? null)
      .catch(() => null)
      .then((kept) => {
        if (isHere) setDraft((now) => now ?? kept ?? latest.current?.begin() ?? null);
      });
    return () => {
      isHere = false;
    };
  }, [name]);

  const { soon, drop } = useSettling(keepNow);

  const change = useCallback(
    (step: (draft: Draft) => Draft) => {
      setDraft((now) => {
        if (now === null) return now;
        const next = step(now);
        unkept.current = next;
        return next;
      });
      soon();
    },
    [soon],
  );

  const forget = useCallback(
    async (isBegun: boolean) => {
      drop();
      unkept.current = null;
      if (isBegun && latest.current !== null) setDraft(latest.current.begin());
      await keep(null).catch(() => undefined);
    },
    [keep, drop],
  );

  return { draft, isKept, change, forget };
}
