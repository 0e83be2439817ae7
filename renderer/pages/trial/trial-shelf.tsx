import { type ReactNode, useState } from 'react';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { words } from '#renderer/parts/shelf/words.ts';
import { WrappedTasting } from '#renderer/parts/shelf/wrapped-shelf.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';

interface TrialShelfProps {
  readonly trial: ValueOf<'trials:open'>;
  /** The labelled jars. */
  readonly children: ReactNode;
}

/** The trial's jars under their labels; in paper, under their codes, while a tasting of them is open. Never both at once. */
export function TrialShelf({ trial, children }: TrialShelfProps) {
  const tastings = useAnswer('tastings:list', {});
  const [isLabelled, setIsLabelled] = useState(false);
  if (tastings.data === undefined) return null;
  const open = tastings.data.tastings.filter((each) => each.trial === trial.id && each.closedAt === null);
  if (open.length === 0) return children;
  return (
    <>
      {isLabelled ? (
        children
      ) : (
        <>
          <p className="soft">
            <Explained words={words.wrappedLine} />
          </p>
          {open.map(({ id, name }) => (
            <div key={id} className="subsection">
              {open.length === 1 ? null : <h3>{name}</h3>}
              <WrappedTasting tasting={id} />
            </div>
          ))}
        </>
      )}
      <div className="button-row no-print">
        <Button weight="quiet" onClick={() => setIsLabelled(!isLabelled)}>
          {isLabelled ? words.showCodes : words.showLabels}
        </Button>
      </div>
    </>
  );
}
