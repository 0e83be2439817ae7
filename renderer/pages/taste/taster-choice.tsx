import { useState } from 'react';
import { phrase } from '#core/words/phrase.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { Sheet } from '#renderer/parts/sheet/sheet.tsx';
import { TasterForm } from '#renderer/parts/taster-form/taster-form.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

interface TasterChoiceProps {
  readonly tasters: ValueOf<'tasters:list'>['tasters'];
  readonly chosen: readonly string[];
  /** One person alone. */
  readonly isAlone: boolean;
  readonly onChange: (chosen: readonly string[]) => void;
}

/** Who tastes; someone new can be added on the spot, and is then chosen. */
export function TasterChoice({ tasters, chosen, isAlone, onChange }: TasterChoiceProps) {
  const [isAdding, setIsAdding] = useState(false);
  return (
    <>
      {tasters.length === 0 ? (
        <p className="soft">
          <Explained words={words.noTasters} />
        </p>
      ) : null}
      <div className="field-grid is-tight">
        {tasters.map(({ id, name, avoids, avoidsAlcohol }) => (
          <label key={id} className="check">
            <input
              type={isAlone ? 'radio' : 'checkbox'}
              name={isAlone ? 'taster' : undefined}
              checked={chosen.includes(id)}
              onChange={({ target }) => {
                if (isAlone) onChange([id]);
                else onChange(target.checked ? [...chosen, id] : chosen.filter((one) => one !== id));
              }}
            />
            <span>
              {name}
              {avoids.length > 0 || avoidsAlcohol ? (
                <span className="soft small">
                  {' '}
                  {words.avoids([...avoids, ...(avoidsAlcohol ? [phrase`alcohol`] : [])])}
                </span>
              ) : null}
            </span>
          </label>
        ))}
      </div>
      <div className="button-row">
        <Button onClick={() => setIsAdding(true)}>{words.addTaster}</Button>
      </div>
      {isAdding ? (
        <Sheet title={words.addTaster} onClose={() => setIsAdding(false)}>
          <TasterForm
            taster={null}
            onDone={(taster) => {
              setIsAdding(false);
              onChange(isAlone ? [taster] : [...chosen, taster]);
            }}
          />
        </Sheet>
      ) : null}
    </>
  );
}
