import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { ask } from '#renderer/app/ask.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { Failure } from '#shared/failure.ts';

/** Redrawn panels: shares then move by about a percent from seed to seed. */
const draws = 5000;

export interface Judgement {
  readonly value: ValueOf<'profiles:judge'> | undefined;
  readonly failure: Failure | null;
  readonly isUnderWay: boolean;
  /** 0 to 1. */
  readonly done: number;
  readonly wasStopped: boolean;
  stop(): void;
  again(): void;
}

/** Which level comes closest: a request that tells how far it is and can be stopped. */
export function useJudgement(trial: string, enabled: boolean): Judgement {
  const client = useQueryClient();
  const [done, setDone] = useState(0);
  const [wasStopped, setStopped] = useState(false);
  const key = ['profiles:judge', { trial, draws }];
  const query = useQuery<ValueOf<'profiles:judge'>, Failure>({
    queryKey: key,
    queryFn: ({ signal }) => {
      setDone(0);
      setStopped(false);
      return ask('profiles:judge', { trial, draws }, { signal, onProgress: (now, of) => setDone(now / of) });
    },
    enabled,
  });
  return {
    value: query.data,
    failure: query.error,
    isUnderWay: query.isFetching,
    done,
    wasStopped: wasStopped && query.data === undefined,
    stop() {
      setStopped(true);
      void client.cancelQueries({ queryKey: key });
    },
    again: () => void query.refetch(),
  };
}
