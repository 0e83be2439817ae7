import { useState } from 'react';
import { useRequest } from '#renderer/app/use-request.ts';
import { amountOf, isClear } from '#renderer/format/typed-amount.ts';
import { typedWeight } from '#renderer/format/typed-cellar.ts';
import { useMeasures } from '#renderer/format/use-measures.ts';
import { AmountField } from '#renderer/parts/amount-field/amount-field.tsx';
import { useAmount } from '#renderer/parts/amount-field/use-amount.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { faultAt } from '#renderer/parts/field/fault-at.ts';
import { Field } from '#renderer/parts/field/field.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { useSayWithUndo } from '#renderer/parts/toast/use-say-with-undo.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

type Act = keyof typeof words.doAct;

/** What is done to a culture: refreshed, weighed, woken; one weight and one note go with whichever it was. */
export function CultureActs({ culture }: { readonly culture: ValueOf<'cultures:open'> }) {
  const { system } = useMeasures();
  const weight = useAmount('', (text) => typedWeight(text, system));
  const [note, setNote] = useState('');
  const [wanted, setWanted] = useState<Act | null>(null);
  const sayWithUndo = useSayWithUndo();
  const log = useRequest('cultures:log', { showsFailure: true });
  const acts: readonly Act[] = culture.isReviving
    ? ['revival-feed', 'revived', 'weighed']
    : ['refreshed', 'weighed', 'revival-feed'];

  function did(what: Act) {
    setWanted(what);
    const weight_g = amountOf(weight.typed);
    if (!isClear(weight.typed) || (what === 'weighed' && weight_g === undefined)) return;
    log.mutate(
      {
        culture: culture.id,
        what,
        ...(weight_g === undefined ? {} : { weight_g }),
        ...(note.trim() === '' ? {} : { note: note.trim() }),
      },
      {
        onSuccess: () => {
          weight.setText('');
          setNote('');
          setWanted(null);
          void sayWithUndo(words.done[what](culture.name));
        },
      },
    );
  }

  return (
    <div className="form">
      <div className="field-grid">
        <AmountField
          label={words.weightNow}
          hint={words.weightHint[system]}
          amount={weight}
          isTried={wanted !== null}
          missing={wanted === 'weighed' ? words.weightMissing : undefined}
          fault={faultAt(log.error, 'weight_g')}
        />
        <Field label={words.note} fault={faultAt(log.error, 'note')}>
          {(wiring) => (
            <input {...wiring} maxLength={4000} value={note} onChange={({ target }) => setNote(target.value)} />
          )}
        </Field>
      </div>
      <div className="button-row">
        {acts.map((what, place) => (
          <Button key={what} weight={place === 0 ? 'main' : 'plain'} disabled={log.isPending} onClick={() => did(what)}>
            {words.doAct[what]}
          </Button>
        ))}
      </div>
      <p className="soft small">
        <Explained words={words.reviveLine} />
      </p>
    </div>
  );
}
