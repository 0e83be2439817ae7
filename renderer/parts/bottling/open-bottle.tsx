import { useState } from 'react';
import { useRequest } from '#renderer/app/use-request.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { Field } from '#renderer/parts/field/field.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { useSayWithUndo } from '#renderer/parts/toast/use-say-with-undo.ts';
import { pours } from '#shared/closed-lists.ts';
import { pourWords, words } from './words.ts';

/** How a bottle poured: one touch, with a word about it where there is one. */
export function OpenBottle({ bottling, onDone }: { readonly bottling: string; readonly onDone: () => void }) {
  const [note, setNote] = useState('');
  const sayWithUndo = useSayWithUndo();
  const open = useRequest('bottles:open');
  function say(pour: (typeof pours)[number]) {
    open.mutate(
      { bottling, pour, ...(note.trim() === '' ? {} : { note: note.trim() }) },
      {
        onSuccess: () => {
          onDone();
          void sayWithUndo(words.opened(pourWords[pour]));
        },
      },
    );
  }
  return (
    <div className="form">
      <Field label={words.remark}>
        {(wiring) => (
          <input
            {...wiring}
            autoComplete="off"
            maxLength={4000}
            value={note}
            onChange={({ target }) => setNote(target.value)}
          />
        )}
      </Field>
      <fieldset className="bottle-pours">
        <legend>
          <Explained words={words.howPoured} />
        </legend>
        {pours.map((pour) => (
          <Button key={pour} disabled={open.isPending} onClick={() => say(pour)}>
            {pourWords[pour]}
          </Button>
        ))}
      </fieldset>
    </div>
  );
}
