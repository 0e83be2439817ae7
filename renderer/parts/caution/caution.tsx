import type { ReactNode } from 'react';
import { phrase } from '#core/words/phrase.ts';
import { glued, gluedText } from '#renderer/format/glued.ts';
import './caution.css';

/** A usual caution, in place: amber, with a mark and the word. */
export function Caution({ children, basis }: { readonly children: ReactNode; readonly basis?: string | undefined }) {
  return (
    <aside className="caution">
      <strong>{phrase`Caution`}</strong>
      <div>
        <p>{gluedText(children)}</p>
        {basis === undefined ? null : <p className="small">{glued(basis)}</p>}
      </div>
    </aside>
  );
}
