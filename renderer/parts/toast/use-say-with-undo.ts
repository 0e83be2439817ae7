import { useQueryClient } from '@tanstack/react-query';
import { useCallback } from 'react';
import { phrase } from '#core/words/phrase.ts';
import { ask } from '#renderer/app/ask.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { Failure } from '#shared/failure.ts';
import { useToasts } from './toasts.tsx';

type UndoState = ValueOf<'undo:state'>;

interface UndoOffer {
  /** Whether the step that undo would take back now is the one spoken of; without it the latest one is. */
  readonly isMine?: (state: UndoState) => boolean;
  readonly onUndone?: () => void;
}

/** Says that something was done, with a button that takes back that step and no other. */
export function useSayWithUndo(): (words: string, offer?: UndoOffer) => Promise<void> {
  const client = useQueryClient();
  const { say } = useToasts();
  return useCallback(
    async (words: string, { isMine = () => true, onUndone }: UndoOffer = {}) => {
      const state = await ask('undo:state', {}).catch(() => null);
      const step = state?.undoRefused === null && isMine(state) ? state.undoStep?.step : undefined;
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
