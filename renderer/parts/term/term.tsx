import type { TermName } from './term-words.ts';
import { useTermPlace } from './use-term-place.ts';
import './term.css';

interface TermProps {
  readonly of: TermName;
  /** The word as it stands in its sentence. */
  readonly children: string;
}

/** A word of the trade: where the page says it first it takes the focus and says what it means; on hover it does everywhere. */
export function Term({ of, children }: TermProps) {
  const { mark, tells, isStop, describedBy } = useTermPlace<HTMLElement>('word', [of]);
  return (
    <dfn
      {...mark}
      className={tells.length > 0 ? 'term is-told' : 'term'}
      tabIndex={tells.length === 0 ? undefined : isStop ? 0 : -1}
      aria-describedby={describedBy}
    >
      {children}
    </dfn>
  );
}
