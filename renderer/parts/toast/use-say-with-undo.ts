import { useQueryClient } from '@tanstack/react-query';
import { useCallback } from 'react';
import { phrase } from '#core/words/phrase.ts';
import { ask } from '#renderer/app/ask.ts';
import type { RequestName } from '#shared/contract/all-requests.ts';
import type { Failure } from '#shared/failure.ts';
import { useToasts } from './toasts.tsx';

interface UndoOffer {
  /** The request that made the step; without it the latest step is the one spoken of. */
  readonly of?: RequestName;
  /** The step that was the latest before: a request that wrote nothing has none of its own. */
  readonly before?: number | undefined;
  readonly onUndone?: () => void;
}

/** Says that something was done, with a button that takes back that step and no other. */
export function useSayWithUndo(): (words: string, offer?: UndoOffer) => Promise<void> {
  const client = useQueryClient();
  const { say } = useToasts();
  return useCallback(
    async (words: string, { of, before, onUndone }: UndoOffer = {}) => {
      const state = await ask('undo:state', {}).catch(() => null);
      const latest = state?.undoRefused === null ? state.undoStep : null;
      const isMine = latest !== null && latest.step !== before && (of === undefined || latest.request === of);
      const step = isMine ? latest.step : undefined;
      const undo = async () => {
        try {
          const { summary } = await ask('undo:last', { step });
          say({ kind: 'done', words: phrase`Undone: ${summary}` });
          onUndone?.();
          void client.invalidateQueries();
        } catch (error) {
          say({ kind: 'fault', words: (error as Failure).message });
        }
      };
      const action = step === undefined ? undefined : { words: phrase`Undo`, act: () => void undo() };
      say({ kind: 'done', words, action });
    },
    [client, say],
  );
}
