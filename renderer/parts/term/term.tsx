import { useId } from 'react';
import { type TermName, termWords } from './term-words.ts';
import './term.css';

interface TermProps {
  readonly of: TermName;
  /** The word as it stands in its sentence; the term itself unless given. */
  readonly children?: string;
}

/** A word of the trade that says what it means, on hover, on focus and on touch. */
export function Term({ of, children = of }: TermProps) {
  const id = useId();
  return (
    <span className="term">
      <button type="button" className="term-word" aria-describedby={id}>
        {children}
      </button>
      <span role="tooltip" id={id} className="term-meaning">
        {termWords[of]}
      </span>
    </span>
  );
}
