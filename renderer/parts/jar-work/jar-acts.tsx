import { useState } from 'react';
import { phrase } from '#core/words/phrase.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { DiscardSheet } from './discard-sheet.tsx';
import { actsOf, type Jar } from './next-act.ts';
import { useJarAct } from './use-jar-act.ts';
import { actWords, words } from './words.ts';
import './jar-work.css';

/** What can be done with one jar now. */
export function JarActs({ jar, isMain = false }: { readonly jar: Jar; readonly isMain?: boolean }) {
  const { act, isBusy } = useJarAct();
  const [isDiscarding, setIsDiscarding] = useState(false);
  return (
    <>
      {actsOf(jar).map((kind, place) => (
        <Button
          key={kind}
          weight={isMain && place === 0 ? 'main' : 'plain'}
          disabled={isBusy}
          aria-label={phrase`${actWords[kind].one} jar ${jar.label}`}
          onClick={() => act(kind, [jar])}
        >
          {actWords[kind].one}
        </Button>
      ))}
      {jar.state === 'discarded' ? null : (
        <Button
          weight="quiet"
          className="jar-discard"
          aria-label={words.discardTitle(jar.label)}
          onClick={() => setIsDiscarding(true)}
        >
          {words.discard}
        </Button>
      )}
      {isDiscarding ? <DiscardSheet jar={jar} onClose={() => setIsDiscarding(false)} /> : null}
    </>
  );
}
