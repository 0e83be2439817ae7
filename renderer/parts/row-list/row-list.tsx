import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { gluedText } from '#renderer/format/glued.ts';
import './row-list.css';

/** A list of things of one kind, each on its own strip of glass. */
export function RowList({ children, label }: { readonly children: ReactNode; readonly label: string }) {
  return (
    <ul className="rows" aria-label={label}>
      {children}
    </ul>
  );
}

interface RowProps {
  readonly title: ReactNode;
  /** Where the title leads. */
  readonly to?: string;
  /** Small marks beside the title. */
  readonly marks?: ReactNode;
  /** One line of facts below the title. */
  readonly facts?: ReactNode;
  /** The figure or state at the end of the row. */
  readonly end?: ReactNode;
  readonly actions?: ReactNode;
}

export function Row({ title, to, marks, facts, end, actions }: RowProps) {
  return (
    <li className="row">
      <div className="row-words">
        <p className="row-title">
          {to === undefined ? gluedText(title) : <Link href={to}>{gluedText(title)}</Link>} {marks}
        </p>
        {facts === undefined ? null : <div className="row-facts">{gluedText(facts)}</div>}
      </div>
      {end == null ? null : <div className="row-end figures">{gluedText(end)}</div>}
      {actions == null ? null : <div className="button-row">{actions}</div>}
    </li>
  );
}
