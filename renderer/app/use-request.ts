import { type UseMutationResult, useMutation, useQueryClient } from '@tanstack/react-query';
import { useToasts } from '#renderer/parts/toast/toasts.tsx';
import { useSayWithUndo } from '#renderer/parts/toast/use-say-with-undo.ts';
import type { AskedOf, RequestName, ValueOf } from '#shared/contract/all-requests.ts';
import type { Failure } from '#shared/failure.ts';
import { ask } from './ask.ts';

export interface RequestOptions<Name extends RequestName> {
  /** Said once it is true, with the way back where there is one. */
  readonly done?: (value: ValueOf<Name>) => string | null;
  /** True where the failure is shown beside its field instead of in a toast. */
  readonly showsFailure?: boolean;
}

/** A request that changes something: sends it, says that it is done or why not, and has its rows read again. */
export function useRequest<Name extends RequestName>(
  name: Name,
  { done, showsFailure = false }: RequestOptions<Name> = {},
): UseMutationResult<ValueOf<Name>, Failure, AskedOf<Name>> {
  const client = useQueryClient();
  const { say } = useToasts();
  const sayWithUndo = useSayWithUndo();
  return useMutation<ValueOf<Name>, Failure, AskedOf<Name>, number | undefined>({
    mutationFn: (input) => ask(name, input),
    onMutate: () => client.getQueryData<ValueOf<'undo:state'>>(['undo:state', {}])?.undoStep?.step,
    onSuccess: (value, _input, before) => {
      const words = done?.(value) ?? null;
      if (words !== null) void sayWithUndo(words, { of: name, before });
      // Also without an event: the events' line may be down.
      void client.invalidateQueries();
    },
    onError: (failure) => {
      if (!showsFailure) say({ kind: 'fault', words: failure.message });
    },
  });
}
