import { useState } from 'react';
import { useLocation } from 'wouter';
import { useRequest } from '#renderer/app/use-request.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { Sheet } from '#renderer/parts/sheet/sheet.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { SheetProgress } from './sheet-progress.ts';
import { words } from './words.ts';

interface CloseProps {
  readonly tasting: ValueOf<'tastings:open'>;
  readonly progress: readonly SheetProgress[];
}

/** The end of a tasting: asked once, because nobody can taste blind a second time; then on to what the scores say. */
export function CloseAndReveal({ tasting, progress }: CloseProps) {
  const [isAsking, setIsAsking] = useState(false);
  const [, go] = useLocation();
  const close = useRequest('tastings:close', { done: () => words.closedNow, showsFailure: true });
  const empty = progress.reduce((sum, { scores, expected }) => sum + expected - scores, 0);
  return (
    <section className="section no-print">
      <h2>
        <Explained words={words.closeTitle} />
      </h2>
      <p>
        <Explained words={words.closeLine} />
      </p>
      <div className="button-row">
        <Button weight={empty === 0 ? 'main' : 'plain'} onClick={() => setIsAsking(true)}>
          {words.close}
        </Button>
      </div>
      {isAsking ? (
        <Sheet title={words.closeAsk} onClose={() => setIsAsking(false)}>
          <div className="form">
            <p>{words.closeAskLine}</p>
            {empty === 0 ? null : <p>{words.closeMissing(empty)}</p>}
            {close.error === null ? null : (
              <p className="field-fault" role="alert">
                {close.error.message}
              </p>
            )}
            <div className="button-row">
              <Button
                weight="main"
                disabled={close.isPending}
                onClick={() =>
                  close.mutate(
                    { tasting: tasting.id },
                    {
                      onSuccess: () =>
                        go(tasting.trial === null ? `/tastings/${tasting.id}` : `/trials/${tasting.trial}/findings`),
                    },
                  )
                }
              >
                {words.closeNow}
              </Button>
              <Button onClick={() => setIsAsking(false)}>{words.keepOpen}</Button>
            </div>
          </div>
        </Sheet>
      ) : null}
    </section>
  );
}
