import type { ReactNode } from 'react';
import { phrase } from '#core/words/phrase.ts';
import './tape.css';

/** A strip of masking tape with something written on it. */
export function Tape({ children, small = false }: { readonly children: ReactNode; readonly small?: boolean }) {
  return <span className={small ? 'tape is-small' : 'tape'}>{children}</span>;
}

/** The mark of a row that came with the sample kitchen. */
export function SampleMark({ when = true }: { readonly when?: boolean }) {
  return when ? <Tape small>{phrase`sample`}</Tape> : null;
}
