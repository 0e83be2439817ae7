import { useRef } from 'react';
import { useRequest } from '#renderer/app/use-request.ts';
import type { Failure } from '#shared/failure.ts';
import { type Wish, withWish } from './wish.ts';

export interface WishKeeper {
  /** Keeps one attribute's wish; null takes it out. */
  keep(attribute: string, wish: Wish | null, told: KeepTold): void;
}

export interface KeepTold {
  readonly onKept: () => void;
  readonly onRefused: (failure: Failure) => void;
}

/** Keeps wishes one at a time. Two changes in a breath build on each other, not on what was read before both. */
export function useWishes(trial: string, stored: readonly Wish[]): WishKeeper {
  const save = useRequest('profiles:save', { showsFailure: true });
  const latest = useRef<readonly Wish[]>(stored);
  const underWay = useRef(0);
  if (underWay.current === 0) latest.current = stored;
  return {
    keep(attribute, wish, { onKept, onRefused }) {
      const before = latest.current;
      const wishes = withWish(before, attribute, wish);
      latest.current = wishes;
      underWay.current += 1;
      const input = wishes.map(({ target, ...rest }) => (target === null ? rest : { ...rest, target }));
      save
        .mutateAsync({ trial, wishes: input })
        .then(onKept, (failure: Failure) => {
          latest.current = before;
          onRefused(failure);
        })
        .finally(() => {
          underWay.current -= 1;
        });
    },
  };
}
