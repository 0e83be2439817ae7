import { useRef } from 'react';
import { ask } from '#renderer/app/ask.ts';
import { useRequest } from '#renderer/app/use-request.ts';
import type { Failure } from '#shared/failure.ts';
import { type Wish, withWish } from './wish.ts';

export interface KeepTold {
  readonly onKept: () => void;
  readonly onRefused: (failure: Failure) => void;
}

export interface WishKeeper {
  /** Changes one attribute's wish as it stands by then; null takes it out. */
  keep(attribute: string, change: (now: Wish | null) => Wish | null, told: KeepTold): void;
}

/** Keeps wishes one after the other. Each change begins from what is stored by then: two in a breath, or from two windows, both stay. */
export function useWishes(trial: string): WishKeeper {
  const save = useRequest('profiles:save', { showsFailure: true });
  const queue = useRef<Promise<void>>(Promise.resolve());

  async function keepNow(attribute: string, change: (now: Wish | null) => Wish | null): Promise<void> {
    const { wishes } = await ask('profiles:open', { trial });
    const now = wishes.find((wish) => wish.attribute === attribute) ?? null;
    const wanted = withWish(wishes, attribute, change(now));
    const input = wanted.map(({ target, ...rest }) => (target === null ? rest : { ...rest, target }));
    await save.mutateAsync({ trial, wishes: input });
  }

  return {
    keep(attribute, change, { onKept, onRefused }) {
      queue.current = queue.current.then(() => keepNow(attribute, change)).then(onKept, onRefused);
    },
  };
}
