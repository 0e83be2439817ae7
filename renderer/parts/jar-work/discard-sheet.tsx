import { type FormEvent, useState } from 'react';
import { useRequest } from '#renderer/app/use-request.ts';
import { joined } from '#renderer/format/words.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { faultAt, faultElsewhere } from '#renderer/parts/field/fault-at.ts';
import { Field } from '#renderer/parts/field/field.tsx';
import { Sheet } from '#renderer/parts/sheet/sheet.tsx';
import { useSayWithUndo } from '#renderer/parts/toast/use-say-with-undo.ts';
import type { Jar } from './next-act.ts';
import { words } from './words.ts';

/** Asks why a jar is thrown away, and notes it. */
export function DiscardSheet({ jar, onClose }: { readonly jar: Jar; readonly onClose: () => void }) {
  const [reason, setReason] = useState('');
  const sayWithUndo = useSayWithUndo();
  const discard = useRequest('jars:discard', { showsFailure: true });

  function send(event: FormEvent) {
    event.preventDefault();
    discard.mutate(
      { jars: [jar.id], reason },
      {
        onSuccess: ({ tastings }) => {
          onClose();
          const out = tastings.length === 0 ? '' : ` ${words.outOf(joined(tastings))}`;
          void sayWithUndo(`${words.discarded(jar.label)}${out}`);
        },
      },
    );
  }

  const elsewhere = faultElsewhere(discard.error, ['reason']);
  return (
    <Sheet title={words.discardTitle(jar.label)} onClose={onClose}>
      <form className="form" onSubmit={send} noValidate>
        <Field label={words.reason} hint={words.reasonHint} fault={faultAt(discard.error, 'reason')}>
          {(wiring) => (
            <input {...wiring} autoComplete="off" value={reason} onChange={({ target }) => setReason(target.value)} />
          )}
        </Field>
        <div className="chips">
          {words.reasons.map((each) => (
            <button key={each} type="button" className="chip" onClick={() => setReason(each)}>
              {each}
            </button>
          ))}
        </div>
        {elsewhere === undefined ? null : (
          <p className="field-fault" role="alert">
            {elsewhere}
          </p>
        )}
        <div className="button-row">
          <Button type="submit" weight="grave" disabled={discard.isPending}>
            {words.discardIt}
          </Button>
        </div>
      </form>
    </Sheet>
  );
}
