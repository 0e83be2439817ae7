import type { ReactNode } from 'react';
import { Explained, explained } from '#renderer/parts/term/explained.tsx';
import './empty-state.css';

interface EmptyStateProps {
  readonly title: string;
  /** What belongs here and why it helps. */
  readonly children: ReactNode;
  readonly actions?: ReactNode;
}

/** An empty shelf that says what will stand on it. */
export function EmptyState({ title, children, actions }: EmptyStateProps) {
  return (
    <section className="empty">
      <svg className="empty-shelf" viewBox="0 0 220 84" aria-hidden="true">
        <g className="empty-jars">
          <path d="M24 20h36v8c0 4 6 6 6 14v26a6 6 0 0 1-6 6H24a6 6 0 0 1-6-6V42c0-8 6-10 6-14z" />
          <path d="M92 20h36v8c0 4 6 6 6 14v26a6 6 0 0 1-6 6H92a6 6 0 0 1-6-6V42c0-8 6-10 6-14z" />
          <path d="M160 20h36v8c0 4 6 6 6 14v26a6 6 0 0 1-6 6h-36a6 6 0 0 1-6-6V42c0-8 6-10 6-14z" />
        </g>
        <path className="empty-plank" d="M0 76h220v6H0z" />
      </svg>
      <h2>
        <Explained words={title} />
      </h2>
      <div className="empty-words">{explained(children)}</div>
      {actions === undefined ? null : <div className="button-row">{actions}</div>}
    </section>
  );
}
