import { useQueries } from '@tanstack/react-query';
import type { AskedOf, RequestName, ValueOf } from '#shared/contract/all-requests.ts';
import type { Failure } from '#shared/failure.ts';
import { ask } from './ask.ts';

export interface SeveralAnswers<Value> {
  /** Those that are here, in the order of the inputs. */
  readonly values: readonly Value[];
  readonly isPending: boolean;
  readonly failure: Failure | null;
}

/** One request asked with several inputs, such as every trial that has jars standing. */
export function useAnswers<Name extends RequestName>(
  name: Name,
  inputs: readonly AskedOf<Name>[],
): SeveralAnswers<ValueOf<Name>> {
  return useQueries({
    queries: inputs.map((input) => ({ queryKey: [name, input], queryFn: () => ask(name, input) })),
    combine: (answers) => ({
      values: answers.flatMap(({ data }) => (data === undefined ? [] : [data as ValueOf<Name>])),
      isPending: answers.some(({ isPending }) => isPending),
      failure: (answers.find(({ error }) => error !== null)?.error as Failure | undefined) ?? null,
    }),
  });
}
