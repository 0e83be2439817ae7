import { useState } from 'react';
import { useRequest } from '#renderer/app/use-request.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { Sheet } from '#renderer/parts/sheet/sheet.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { missingWords, words } from './words.ts';

/** Asks once, and says that it is for good. */
export function RevealButton({ test }: { readonly test: ValueOf<'discriminations:open'> }) {
  const [isAsking, setAsking] = useState(false);
  const close = useRequest('discriminations:close');
  const isEmpty = test.answered === 0;
  return (
    <>
      {isEmpty ? (
        <p className="soft">
          <Explained words={words.revealFirst} />
        </p>
      ) : null}
      <div className="button-row">
        {/* Never disabled outright: the keyboard's way leads here while the last answer is still being kept. */}
        <Button weight="main" data-reveal aria-disabled={isEmpty} onClick={() => setAsking(!isEmpty)}>
          {words.reveal}
        </Button>
      </div>
      {isAsking ? (
        <Sheet title={words.revealTitle} onClose={() => setAsking(false)}>
          <div className="apart-asked">
            <p>{missingWords(test.answered, test.presentations)}</p>
            <p>{words.revealForGood}</p>
            <div className="button-row">
              <Button
                weight="main"
                disabled={close.isPending}
                onClick={() => close.mutate({ discrimination: test.id }, { onSettled: () => setAsking(false) })}
              >
                {words.revealYes}
              </Button>
              <Button onClick={() => setAsking(false)}>{words.revealNo}</Button>
            </div>
          </div>
        </Sheet>
      ) : null}
    </>
  );
}
