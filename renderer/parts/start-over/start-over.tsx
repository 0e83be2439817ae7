import { useState } from 'react';
import { Button } from '#renderer/parts/button/button.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import './start-over.css';

interface StartOverProps {
  readonly words: {
    readonly startOver: string;
    readonly startOverSure: string;
    readonly startOverYes: string;
    readonly startOverNo: string;
  };
  readonly onForget: () => void;
}

/** Forgets what is half made, after asking once: a draft has no undo. */
export function StartOver({ words, onForget }: StartOverProps) {
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
      <legend>
        <Explained words={words.startOverSure} />
      </legend>
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
