import { useState } from 'react';
import { useKept } from './use-kept.ts';

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
  const { body, keep } = useKept(name);
  const [made, setMade] = useState<Choice | null>(null);
  return [
    made ?? (body === null ? null : read(body)),
    (choice) => {
      setMade(choice);
      keep(choice);
    },
  ];
}
