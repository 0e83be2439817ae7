import type { ReactNode } from 'react';
import { gluedText } from '#renderer/format/glued.ts';
import { Explained } from '#renderer/parts/term/explained.tsx';
import './facts.css';

export interface Fact {
  readonly name: string;
  readonly value: ReactNode;
}

/** A short list of names and values. Values that nobody gave are left out by the caller, not shown as zero. */
export function Facts({ facts }: { readonly facts: readonly Fact[] }) {
  return (
    <dl className="facts">
      {facts.map(({ name, value }) => (
        <div key={name}>
          <dt>
            <Explained words={name} />
          </dt>
          <dd>{gluedText(value)}</dd>
        </div>
      ))}
    </dl>
  );
}
