import { type UseMutationResult, useMutation, useQueryClient } from '@tanstack/react-query';
import { useToasts } from '#renderer/parts/toast/toasts.tsx';
import type { AskedOf, RequestName, ValueOf } from '#shared/contract/all-requests.ts';
import type { Failure } from '#shared/failure.ts';
import { ask } from './ask.ts';

export interface RequestOptions<Name extends RequestName> {
  /** Said once it is true. */
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
  return useMutation<ValueOf<Name>, Failure, AskedOf<Name>>({
    mutationFn: (input) => ask(name, input),
    onSuccess: (value) => {
      const words = done?.(value) ?? null;
      if (words !== null) say({ kind: 'done', words });
      // Also without an event: the events' line may be down.
      void client.invalidateQueries();
    },
    onError: (failure) => {
      if (!showsFailure) say({ kind: 'fault', words: failure.message });
    },
  });
}
