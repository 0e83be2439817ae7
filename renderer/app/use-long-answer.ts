import { keepPreviousData, useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import type { AskedOf, RequestName, ValueOf } from '#shared/contract/all-requests.ts';
import type { Failure } from '#shared/failure.ts';
import { ask } from './ask.ts';

/** An answer that may take a while: it tells how far it is and can be stopped. */
export interface LongAnswer<Value> {
  readonly value: Value | undefined;
  readonly failure: Failure | null;
  /** The value answers an earlier input. */
  readonly isEarlier: boolean;
  readonly isUnderWay: boolean;
  /** 0 to 1. */
  readonly done: number;
  readonly wasStopped: boolean;
  stop(): void;
  again(): void;
}

export interface LongAnswerOptions {
  readonly enabled?: boolean;
  /** Keep showing the last answer while the input changes. */
  readonly keepLast?: boolean;
  /** What tells this input from others, where the input itself is too long to compare. */
  readonly key?: unknown;
}

/** The desk's answer to a long reading request, kept and read again when its rows change. */
export function useLongAnswer<Name extends RequestName>(
  name: Name,
  input: AskedOf<Name>,
  { enabled = true, keepLast = false, key = input }: LongAnswerOptions = {},
): LongAnswer<ValueOf<Name>> {
  const client = useQueryClient();
  const [done, setDone] = useState(0);
  const [wasStopped, setStopped] = useState(false);
  const queryKey = [name, key];
  const query = useQuery<ValueOf<Name>, Failure>({
    queryKey,
    queryFn: ({ signal }) => {
      setDone(0);
      setStopped(false);
      return ask(name, input, { signal, onProgress: (now, of) => setDone(of === 0 ? 0 : now / of) });
    },
    enabled,
    ...(keepLast ? { placeholderData: keepPreviousData } : {}),
  });
  return {
    value: query.data,
    failure: query.error,
    isEarlier: query.isPlaceholderData,
    isUnderWay: query.isFetching,
    done,
    wasStopped: wasStopped && (query.data === undefined || query.isPlaceholderData),
    stop() {
      setStopped(true);
      void client.cancelQueries({ queryKey });
    },
    again: () => void query.refetch(),
  };
}
