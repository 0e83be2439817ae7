import { useQueryClient } from '@tanstack/react-query';
import { useEffect, useRef, useState } from 'react';
import { phrase } from '#core/words/phrase.ts';
import { ask } from '#renderer/app/ask.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { Failure } from '#shared/failure.ts';

/** What a lone taster has done so far: scores by the cup's place, codes once the cups are turned over. */
export interface AloneDraft {
  readonly step: number;
  /** `place/attribute` to what was typed. */
  readonly texts: Readonly<Record<string, string>>;
  /** Place to the code under the cup. */
  readonly codes: Readonly<Record<string, string>>;
}

export const noDraft: AloneDraft = { step: 0, texts: {}, codes: {} };

export function aloneDraftName(tasting: string): string {
  return `tasting alone ${tasting}`;
}

function wordsIn(value: unknown): Record<string, string> {
  if (typeof value !== 'object' || value === null) return {};
  return Object.fromEntries(Object.entries(value).filter(([, text]) => typeof text === 'string'));
}

/** A draft as the store gave it back; whatever does not look like one begins anew. */
export function aloneDraftOf(body: unknown): AloneDraft {
  if (typeof body !== 'object' || body === null) return noDraft;
  const { step, texts, codes } = body as Record<string, unknown>;
  return {
    step: typeof step === 'number' && step >= 0 && step <= 3 ? Math.floor(step) : 0,
    texts: wordsIn(texts),
    codes: wordsIn(codes),
  };
}

/**
 * The places of the cups in the order of tasting, counted from 1.
 *
 * The serving order names codes; a row of shuffled cups has places instead. Any order of places serves, and this one comes from
 * the design, so that it is as random.
 */
export function placesInOrder({ sittings }: Pick<ValueOf<'tastings:open'>['orders'][number], 'sittings'>): number[] {
  const codes = sittings.flatMap((sitting) => sitting.codes);
  const sorted = codes.toSorted();
  return codes.map((code) => sorted.indexOf(code) + 1);
}

const pause_ms = 400;

export interface KeptDraft {
  readonly draft: AloneDraft;
  readonly change: (part: Partial<AloneDraft>) => void;
  /** Why the last change is not kept; null when it is, or is on its way. */
  readonly failure: string | null;
  /** Forgets the draft once its scores are kept. */
  readonly forget: () => Promise<void>;
}

/** A draft that is kept a moment after each change. */
export function useAloneDraft(tasting: string, first: AloneDraft): KeptDraft {
  const client = useQueryClient();
  const [draft, setDraft] = useState(first);
  const [failure, setFailure] = useState<string | null>(null);
  const waits = useRef<AloneDraft | null>(null);
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);

  const keep = useRef(async () => {});
  keep.current = async () => {
    clearTimeout(timer.current);
    const body = waits.current;
    if (body === null) return;
    waits.current = null;
    const name = aloneDraftName(tasting);
    const written = { step: body.step, texts: { ...body.texts }, codes: { ...body.codes } };
    try {
      await ask('drafts:keep', { name, body: written });
      // Drafts stand outside the change events: whoever comes back finds the newest.
      client.setQueryData(['drafts:open', { name }], { draft: { body: written, keptAt: new Date().toISOString() } });
      setFailure(null);
    } catch (error) {
      setFailure(error instanceof Failure ? error.message : phrase`the kitchen did not answer.`);
    }
  };
  useEffect(() => {
    const last = keep.current;
    return () => void last();
  }, []);

  return {
    draft,
    failure,
    change(part) {
      setDraft((before) => {
        const next = { ...before, ...part };
        waits.current = next;
        return next;
      });
      clearTimeout(timer.current);
      timer.current = setTimeout(() => void keep.current(), pause_ms);
    },
    async forget() {
      clearTimeout(timer.current);
      waits.current = null;
      await ask('drafts:keep', { name: aloneDraftName(tasting), body: null });
    },
  };
}
