import { type KeyboardEvent, useEffect, useId, useState } from 'react';
import { useRequest } from '#renderer/app/use-request.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { type Method, words } from './words.ts';

interface TrayProps {
  readonly discrimination: string;
  readonly method: Method;
  readonly tray: ValueOf<'discriminations:open'>['list'][number];
  readonly showsRound: boolean;
  /** Enter was pressed: on to the next tray. */
  readonly onNext: () => void;
}

/** One tray: its cups by code, and the one that was chosen. Kept at once; a second thought replaces it. */
export function Tray({ discrimination, method, tray, showsRound, onNext }: TrayProps) {
  const { taster, tasterName, round, codes, chosen } = tray;
  const group = useId();
  const answer = useRequest('discriminations:answer');
  const [typed, setTyped] = useState<{ readonly place: number | null } | null>(null);
  // What was just touched shows at once, until the desk has it.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the stored choice is what it waits for
  useEffect(() => setTyped(null), [chosen]);
  const shown = typed === null ? chosen : typed.place;

  function choose(place: number | null): void {
    if (place === shown) return;
    setTyped({ place });
    answer.mutate({ discrimination, taster, round, chosen: place }, { onError: () => setTyped(null) });
  }

  function onKey(event: KeyboardEvent<HTMLElement>): void {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const onRadio = event.target instanceof HTMLInputElement;
    const place = Number(event.key);
    if (Number.isInteger(place) && place >= 1 && place <= codes.length) {
      choose(place);
      const radio = event.currentTarget.querySelectorAll('input')[place - 1];
      radio?.focus();
    } else if (event.key === 'Enter' && onRadio) onNext();
    else if (event.key === 'Backspace' || event.key === 'Delete') choose(null);
    else return;
    event.preventDefault();
  }

  const title = showsRound ? `${tasterName}, ${words.round(round)}` : tasterName;
  return (
    <fieldset className="apart-tray" onKeyDown={onKey}>
      <legend>{title}</legend>
      <div className="apart-cups">
        {method === 'duo-trio' ? <span className="apart-cup is-reference">{words.reference}</span> : null}
        {codes.map((code, index) => (
          <label key={code} className="apart-cup">
            <input type="radio" name={group} checked={shown === index + 1} onChange={() => choose(index + 1)} />
            <span className="figures">{code}</span>
          </label>
        ))}
        {shown === null ? null : (
          <Button
            weight="quiet"
            aria-label={`${words.takeBack}: ${title}`}
            onClick={({ currentTarget }) => {
              // The button goes away with the answer: the cups take the focus.
              currentTarget.closest('fieldset')?.querySelector('input')?.focus();
              choose(null);
            }}
          >
            {words.takeBack}
          </Button>
        )}
      </div>
    </fieldset>
  );
}
