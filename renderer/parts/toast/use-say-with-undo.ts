import { useQueryClient } from '@tanstack/react-query';
import { useCallback } from 'react';
import { phrase } from '#core/words/phrase.ts';
import { ask } from '#renderer/app/ask.ts';
import type { Failure } from '#shared/failure.ts';
import { useToasts } from './toasts.tsx';

/**
 * Says that something was done, with a button that takes it back.
 *
 * The button undoes only the step it speaks of: when something else was done since, it says so and leaves all as it is.
 */
export function useSayWithUndo(): (words: string, onUndone?: () => void) => Promise<void> {
  const client = useQueryClient();
  const { say } = useToasts();
  return useCallback(
    async (words: string, onUndone?: () => void) => {
      const mine = await ask('undo:state', {}).catch(() => null);
      const undo = async () => {
        try {
          const now = await ask('undo:state', {});
          if (now.undo !== mine?.undo) {
            say({
              kind: 'fault',
              words: phrase`Something else was done since. The undo button takes back the latest step.`,
            });
            return;
          }
          const { summary } = await ask('undo:last', {});
          say({ kind: 'done', words: phrase`Undone: ${summary}` });
          onUndone?.();
          void client.invalidateQueries();
        } catch (error) {
          say({ kind: 'fault', words: (error as Failure).message });
        }
      };
      const offer = mine?.undo == null ? undefined : { words: phrase`Undo`, act: () => void undo() };
      say({ kind: 'done', words, action: offer });
    },
    [client, say],
  );
}
