import { useCallback, useEffect, useRef, useState } from 'react';
import type { MeasureSystem } from '#core/units/format-quantity.ts';
import { ask } from '#renderer/app/ask.ts';
import type { PlanChange } from './change-plan.ts';
import { nextFullHour } from './local-moment.ts';
import { isUntouched, keptPlan, newPlan, type PlanDraft } from './plan-draft.ts';

const draftName = 'plan';
const settles_ms = 400;

/** An empty plan, with a seed of its own. */
export function freshPlan(system: MeasureSystem): PlanDraft {
  const [seed = 1] = crypto.getRandomValues(new Uint32Array(1));
  return newPlan(system, nextFullHour(new Date()), seed);
}

/** Keeps a plan for the next time the form is opened; null forgets it. */
export function keepPlan(draft: PlanDraft | null): Promise<unknown> {
  return ask('drafts:keep', { name: draftName, body: draft });
}

export interface KeptDraft {
  /** Null while it is being read. */
  readonly draft: PlanDraft | null;
  readonly isKept: boolean;
  readonly change: (change: PlanChange) => void;
  /** Forgets what was written; with `begin`, an empty plan takes its place. */
  readonly forget: (begin: boolean) => Promise<void>;
}

/** The half-made plan: read once, kept a moment after each change, and at once when the page is left. */
export function usePlanDraft(system: MeasureSystem | undefined): KeptDraft {
  const [draft, setDraft] = useState<PlanDraft | null>(null);
  const [isKept, setIsKept] = useState(true);
  const unkept = useRef<PlanDraft | null>(null);
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);

  const keepNow = useCallback(() => {
    clearTimeout(timer.current);
    const body = unkept.current;
    if (body === null) return;
    unkept.current = null;
    keepPlan(isUntouched(body) ? null : body).then(
      () => setIsKept(true),
      () => setIsKept(false),
    );
  }, []);

  useEffect(() => {
    if (system === undefined) return;
    let isHere = true;
    ask('drafts:open', { name: draftName })
      .then(({ draft: kept }) => keptPlan(kept?.body))
      .catch(() => null)
      .then((kept) => {
        if (isHere) setDraft((now) => now ?? kept ?? freshPlan(system));
      });
    return () => {
      isHere = false;
    };
  }, [system]);

  useEffect(() => {
    window.addEventListener('pagehide', keepNow);
    return () => {
      window.removeEventListener('pagehide', keepNow);
      keepNow();
    };
  }, [keepNow]);

  const change = useCallback(
    (step: PlanChange) => {
      setDraft((now) => {
        if (now === null) return now;
        const next = step(now);
        unkept.current = next;
        return next;
      });
      clearTimeout(timer.current);
      timer.current = setTimeout(keepNow, settles_ms);
    },
    [keepNow],
  );

  const forget = useCallback(
    async (begin: boolean) => {
      clearTimeout(timer.current);
      unkept.current = null;
      if (begin && system !== undefined) setDraft(freshPlan(system));
      await keepPlan(null).catch(() => undefined);
    },
    [system],
  );

  return { draft, isKept, change, forget };
}
