import { type RefCallback, useCallback, useEffect, useState } from 'react';
import { addPlace, type PlaceState, settleIfNeeded, silent, type TermKind } from './term-places.ts';
import type { TermName } from './term-words.ts';

/** The id under which the meaning of a word stands, for `aria-describedby`. */
export function meaningId(name: TermName): string {
  return `term-meaning-${name}`;
}

export interface PlaceWiring<Of extends HTMLElement> extends PlaceState {
  /** Goes onto the word, the label or the link. */
  readonly mark: {
    readonly ref: RefCallback<Of>;
    readonly 'data-says': string | undefined;
    readonly 'data-tells': string | undefined;
  };
  /** Goes onto what takes the focus. */
  readonly describedBy: string | undefined;
}

/** Makes an element a place where words of the trade stand: it hears which of them it is the first to say. */
export function useTermPlace<Of extends HTMLElement>(kind: TermKind, names: readonly TermName[]): PlaceWiring<Of> {
  const [state, setState] = useState<PlaceState>(silent);
  const says = names.join(' ');
  const ref = useCallback(
    (element: Of | null) => {
      if (element === null || says === '') return;
      return addPlace({ element, kind, names: says.split(' ') as TermName[], hear: setState });
    },
    [kind, says],
  );
  // By now every place of this drawing has come.
  useEffect(settleIfNeeded);
  const tells = state.tells.filter((name) => names.includes(name));
  return {
    ...state,
    tells,
    mark: { ref, 'data-says': says || undefined, 'data-tells': tells.join(' ') || undefined },
    describedBy: tells.length === 0 ? undefined : tells.map(meaningId).join(' '),
  };
}
