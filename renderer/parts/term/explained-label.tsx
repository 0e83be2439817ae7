import type { ReactNode } from 'react';
import { glued } from '#renderer/format/glued.ts';
import { partsWithTerms, termsIn } from './find-terms.ts';
import { type PlaceWiring, useTermPlace } from './use-term-place.ts';
import './term.css';

export interface ExplainedLabel<Of extends HTMLElement> extends Pick<PlaceWiring<Of>, 'mark' | 'describedBy'> {
  /** The words, with those that are told here marked. */
  readonly words: ReactNode;
  /** The same of the line below. */
  readonly line: ReactNode;
}

/**
 * The words of something that takes the focus by itself: a field's label, a link. Hovering them, or focusing what they name, says what
 * they mean; nothing is added to the order of Tab.
 *
 * @param line what stands below the label and belongs to it
 */
export function useExplainedLabel<Of extends HTMLElement>(label: string, line = ''): ExplainedLabel<Of> {
  const names = [...new Set([...termsIn(label), ...termsIn(line)])];
  const { mark, tells, describedBy } = useTermPlace<Of>('control', names);
  const marked = (words: string) =>
    partsWithTerms(glued(words)).map((part) =>
      typeof part === 'string' ? (
        part
      ) : (
        <span key={part.of} className={tells.includes(part.of) ? 'term is-told' : 'term'}>
          {part.said}
        </span>
      ),
    );
  return { mark, describedBy, words: marked(label), line: marked(line) };
}

/** What opens a folded part, with its words of the trade told. */
export function ExplainedSummary({ words }: { readonly words: string }) {
  const label = useExplainedLabel<HTMLElement>(words);
  return (
    <summary {...label.mark} aria-describedby={label.describedBy}>
      <span>{label.words}</span>
    </summary>
  );
}
