import { type ReactNode, useEffect, useRef } from 'react';
import { Explained, explained } from '#renderer/parts/term/explained.tsx';
import { headingCame } from './heading-focus.ts';
import './page-head.css';

interface PageHeadProps {
  readonly title: string;
  /** The title is people's own words, in which nothing is explained. */
  readonly isTitleTheirs?: boolean;
  /** Above the title: where this page belongs. */
  readonly above?: ReactNode;
  readonly lead?: ReactNode;
  readonly actions?: ReactNode;
}

/** The head of a page; names the window too. */
export function PageHead({ title, isTitleTheirs = false, above, lead, actions }: PageHeadProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => headingCame(heading.current), []);
  useEffect(() => {
    document.title = `${title} · Sidejar`;
  }, [title]);
  return (
    <header className="page-head">
      <div className="page-head-words">
        {above === undefined ? null : <div className="page-head-above">{above}</div>}
        <h1 ref={heading} tabIndex={-1}>
          {isTitleTheirs ? title : <Explained words={title} />}
        </h1>
        {lead === undefined ? null : <div className="page-head-lead">{explained(lead)}</div>}
      </div>
      {actions === undefined ? null : <div className="button-row no-print">{actions}</div>}
    </header>
  );
}
