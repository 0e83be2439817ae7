import { useRef } from 'react';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { Tray } from './tray.tsx';
import { answeredWords, words } from './words.ts';

/** Every taster's tray, in the order of serving, with the answers so far. */
export function Trays({ test }: { readonly test: ValueOf<'discriminations:open'> }) {
  const list = useRef<HTMLOListElement>(null);
  const hasRounds = test.list.some(({ round }) => round > 1);

  function goOn(from: number): void {
    const radios = list.current?.querySelectorAll(`[data-tray="${from + 1}"] input`) ?? [];
    const next = [...radios].find((radio) => (radio as HTMLInputElement).checked) ?? radios[0];
    // After the last tray the way leads on to revealing.
    const target = next ?? document.querySelector('[data-reveal]');
    if (target instanceof HTMLElement) target.focus();
  }

  return (
    <>
      <p role="status" className="figures">
        {answeredWords(test.answered, test.presentations)}
      </p>
      <p className="apart-keys small soft">{words.keys(test.list[0]?.codes.length ?? 2)}</p>
      <ol ref={list} className="apart-trays">
        {test.list.map((tray, place) => (
          <li key={`${tray.taster} ${tray.round}`} data-tray={place}>
            <Tray
              discrimination={test.id}
              method={test.method}
              tray={tray}
              showsRound={hasRounds}
              onNext={() => goOn(place)}
            />
          </li>
        ))}
      </ol>
    </>
  );
}
