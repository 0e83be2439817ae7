import { useState } from 'react';
import { Button } from '#renderer/parts/button/button.tsx';
import { words } from './words.ts';

/** Forgets the half-built tasting, after asking once: a draft has no undo. */
export function StartOver({ onForget }: { readonly onForget: () => void }) {
  const [isAsking, setIsAsking] = useState(false);
  if (!isAsking) {
    return (
      <Button weight="quiet" onClick={() => setIsAsking(true)}>
        {words.startOver}
      </Button>
    );
  }
  return (
    <fieldset className="start-over">
      <legend>{words.startOverSure}</legend>
      <div className="button-row">
        <Button
          weight="grave"
          autoFocus
          onClick={() => {
            setIsAsking(false);
            onForget();
          }}
        >
          {words.startOverYes}
        </Button>
        <Button onClick={() => setIsAsking(false)}>{words.startOverNo}</Button>
      </div>
    </fieldset>
  );
}
