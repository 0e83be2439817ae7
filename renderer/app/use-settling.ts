import { useCallback, useEffect, useRef } from 'react';

export interface Settling {
  /** Acts once nothing more has come for a while. */
  readonly soon: () => void;
  readonly now: () => void;
  /** Whatever was to be done is no longer. */
  readonly drop: () => void;
}

const settles_ms = 400;

/**
 * Does something a moment after the last change, and at once when the page or the window is left.
 *
 * @param act called once more than needed where nothing waits: it looks itself whether there is anything to do; the same function at
 * every drawing, or what waits is done at each
 */
export function useSettling(act: () => void): Settling {
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const drop = useCallback(() => clearTimeout(timer.current), []);
  const now = useCallback(() => {
    drop();
    act();
  }, [act, drop]);
  const soon = useCallback(() => {
    drop();
    timer.current = setTimeout(act, settles_ms);
  }, [act, drop]);
  useEffect(() => {
    window.addEventListener('pagehide', now);
    return () => {
      window.removeEventListener('pagehide', now);
      now();
    };
  }, [now]);
  return { soon, now, drop };
}
