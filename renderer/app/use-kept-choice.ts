import { useQueryClient } from '@tanstack/react-query';
import { useEffect, useRef, useState } from 'react';
import { ask } from './ask.ts';
import { useAnswer } from './use-answer.ts';

const pause_ms = 300;

/**
 * A choice that the kitchen remembers, outside history and undo: how things are printed, for instance.
 *
 * @param name of the draft it is kept as
 * @param read what the kitchen kept; null where that is no such choice
 * @returns the choice, null while none was ever made; and what makes it
 */
export function useKeptChoice<Choice>(
  name: string,
  read: (body: unknown) => Choice | null,
): [Choice | null, (choice: Choice) => void] {
  const client = useQueryClient();
  const kept = useAnswer('drafts:open', { name });
  const [made, setMade] = useState<Choice | null>(null);
  const waits = useRef<Choice | null>(null);
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const keep = useRef(() => {});
  keep.current = () => {
    clearTimeout(timer.current);
    const body = waits.current;
    if (body === null) return;
    waits.current = null;
    client.setQueryData(['drafts:open', { name }], { draft: { body, keptAt: new Date().toISOString() } });
    // What could not be remembered is chosen again next time; nothing is lost by it.
    void ask('drafts:keep', { name, body }).catch(() => undefined);
  };
  useEffect(() => () => keep.current(), []);
  const before = kept.data?.draft == null ? null : read(kept.data.draft.body);
  return [
    made ?? before,
    (choice) => {
      setMade(choice);
      waits.current = choice;
      clearTimeout(timer.current);
      timer.current = setTimeout(() => keep.current(), pause_ms);
    },
  ];
}
