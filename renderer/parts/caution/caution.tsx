import type { ReactNode } from 'react';
import { phrase } from '#core/words/phrase.ts';
import './caution.css';

/** A usual caution, in place: amber, with a mark and the word. */
export function Caution({ children, basis }: { readonly children: ReactNode; readonly basis?: string | undefined }) {
  return (
    <aside className="caution">
      <strong>{phrase`Caution`}</strong>
      <div>
        <p>{children}</p>
        {basis === undefined ? null : <p className="small">{basis}</p>}
      </div>
    </aside>
  );
}
