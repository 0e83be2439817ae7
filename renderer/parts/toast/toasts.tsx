import { createContext, type ReactNode, useCallback, useContext, useMemo, useRef, useState } from 'react';
import { phrase } from '#core/words/phrase.ts';
import './toasts.css';

export interface Toast {
  readonly kind: 'done' | 'fault';
  readonly words: string;
  /** One thing to do about it, such as taking it back. */
  readonly action?: { readonly words: string; readonly act: () => void } | undefined;
}

interface Toasts {
  say(toast: Toast): void;
}

const ToastContext = createContext<Toasts>({ say() {} });

/** Says a short sentence at the edge of the page, and to screen readers. */
export function useToasts(): Toasts {
  return useContext(ToastContext);
}

const stays_ms = 6000;
/** Long enough to read it and to reach its button. */
const staysWithAction_ms = 12_000;

/** The live region. Faults stay until they are put away; the rest fades by itself. */
export function ToastRegion({ children }: { readonly children: ReactNode }) {
  const [shown, setShown] = useState<readonly (Toast & { id: number })[]>([]);
  const last = useRef(0);
  const putAway = useCallback((id: number) => setShown((all) => all.filter((one) => one.id !== id)), []);
  const say = useCallback(
    (toast: Toast) => {
      last.current += 1;
      const id = last.current;
      setShown((all) => [...all.slice(-2), { ...toast, id }]);
      if (toast.kind === 'done') {
        setTimeout(() => putAway(id), toast.action === undefined ? stays_ms : staysWithAction_ms);
      }
    },
    [putAway],
  );
  const toasts = useMemo(() => ({ say }), [say]);
  return (
    <ToastContext value={toasts}>
      {children}
      <div className="toasts no-print" role="status" aria-live="polite">
        {shown.map(({ id, kind, words, action }) => (
          <p key={id} className={`toast is-${kind}`}>
            <span>{words}</span>
            {action === undefined ? null : (
              <button
                type="button"
                className="toast-act"
                onClick={() => {
                  putAway(id);
                  action.act();
                }}
              >
                {action.words}
              </button>
            )}
            <button
              type="button"
              className="toast-away"
              onClick={() => putAway(id)}
              aria-label={phrase`Put away: ${words}`}
            >
              ×
            </button>
          </p>
        ))}
      </div>
    </ToastContext>
  );
}
