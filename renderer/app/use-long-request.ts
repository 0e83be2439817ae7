import { useQueryClient } from '@tanstack/react-query';
import { useRef, useState } from 'react';
import { phrase } from '#core/words/phrase.ts';
import type { CountedWork } from '#shared/carriage.ts';
import type { AskedOf, RequestName, ValueOf } from '#shared/contract/all-requests.ts';
import { Failure } from '#shared/failure.ts';
import { ask } from './ask.ts';

/** A long piece of work that a person starts: how far it is, a way to stop it, and what came of it. */
export interface LongRequest<Name extends RequestName> {
  readonly value: ValueOf<Name> | undefined;
  readonly failure: Failure | null;
  readonly isUnderWay: boolean;
  /** 0 to 1. */
  readonly done: number;
  /** What it is busy with, where that can be counted. */
  readonly work: CountedWork | null;
  readonly wasStopped: boolean;
  run(input: AskedOf<Name>): Promise<ValueOf<Name> | null>;
  stop(): void;
  again(): void;
  forget(): void;
}

/** Starts a long request when told to; everything shown is read again once it is done. */
export function useLongRequest<Name extends RequestName>(name: Name): LongRequest<Name> {
  const client = useQueryClient();
  const [value, setValue] = useState<ValueOf<Name> | undefined>(undefined);
  const [failure, setFailure] = useState<Failure | null>(null);
  const [done, setDone] = useState<number | null>(null);
  const [work, setWork] = useState<CountedWork | null>(null);
  const running = useRef<AbortController | null>(null);
  const last = useRef<AskedOf<Name> | null>(null);

  async function run(input: AskedOf<Name>): Promise<ValueOf<Name> | null> {
    running.current?.abort();
    const own = new AbortController();
    running.current = own;
    last.current = input;
    setFailure(null);
    setValue(undefined);
    setDone(0);
    setWork(null);
    try {
      const found = await ask(name, input, {
        signal: own.signal,
        onProgress: (now, of, busyWith) => {
          setDone(of === 0 ? 0 : now / of);
          setWork(busyWith ?? null);
        },
      });
      setValue(found);
      void client.invalidateQueries();
      return found;
    } catch (error) {
      setFailure(error instanceof Failure ? error : new Failure('internal', phrase`Something went wrong on our side.`));
      return null;
    } finally {
      if (running.current === own) setDone(null);
    }
  }

  return {
    value,
    failure: failure?.code === 'stopped' ? null : failure,
    isUnderWay: done !== null,
    done: done ?? 0,
    work,
    wasStopped: failure?.code === 'stopped',
    run,
    stop: () => running.current?.abort(),
    again: () => (last.current === null ? undefined : void run(last.current)),
    forget() {
      setValue(undefined);
      setFailure(null);
    },
  };
}
