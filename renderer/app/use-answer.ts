import { keepPreviousData, type UseQueryResult, useQuery } from '@tanstack/react-query';
import type { AskedOf, RequestName, ValueOf } from '#shared/contract/all-requests.ts';
import type { Failure } from '#shared/failure.ts';
import { ask } from './ask.ts';

export interface AnswerOptions {
  readonly enabled?: boolean;
  /** Keep showing the last answer while the input changes. */
  readonly keepLast?: boolean;
  /** What tells this input from others, where the input itself is too long to compare. */
  readonly key?: unknown;
}

/** The desk's answer to a reading request, kept and read again when its rows change. */
export function useAnswer<Name extends RequestName>(
  name: Name,
  input: AskedOf<Name>,
  { enabled = true, keepLast = false, key = input }: AnswerOptions = {},
): UseQueryResult<ValueOf<Name>, Failure> {
  return useQuery<ValueOf<Name>, Failure>({
    queryKey: [name, key],
    queryFn: () => ask(name, input),
    enabled,
    ...(keepLast ? { placeholderData: keepPreviousData } : {}),
  });
}
