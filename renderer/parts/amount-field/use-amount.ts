import { useState } from 'react';
import type { TypedAmount } from '#renderer/format/typed-amount.ts';

/** What stands in an amount's field, and what it is read as. */
export interface Amount {
  readonly text: string;
  readonly setText: (text: string) => void;
  readonly typed: TypedAmount;
  /** The odd amount is meant as it stands. */
  readonly sayYes: () => void;
  readonly isTouched: boolean;
  readonly touch: () => void;
  /** Whether anything else stands there than at first. */
  readonly isChanged: boolean;
}

/**
 * The state of a field that is read as it is typed; a doubtful unit is asked about before it counts.
 *
 * @param onText told of each change, where what is typed is kept for the next time
 */
export function useAmount(first: string, read: (text: string) => TypedAmount, onText?: (text: string) => void): Amount {
  const [text, setText] = useState(first);
  const [meant, setMeant] = useState<string | null>(null);
  const [isTouched, setIsTouched] = useState(false);
  const raw = read(text);
  return {
    text,
    setText(next) {
      setText(next);
      onText?.(next);
    },
    typed: raw.kind === 'doubt' && meant === text ? { kind: 'amount', value: raw.value } : raw,
    sayYes: () => setMeant(text),
    isTouched,
    touch: () => setIsTouched(true),
    isChanged: text.trim() !== first.trim(),
  };
}
