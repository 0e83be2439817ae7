import { type FormEvent, useState } from 'react';
import { useRequest } from '#renderer/app/use-request.ts';
import { amountOf } from '#renderer/format/typed-amount.ts';
import { typedWeight } from '#renderer/format/typed-cellar.ts';
import { useMeasures } from '#renderer/format/use-measures.ts';
import { AmountField } from '#renderer/parts/amount-field/amount-field.tsx';
import { useAmount } from '#renderer/parts/amount-field/use-amount.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { faultAt, faultElsewhere } from '#renderer/parts/field/fault-at.ts';
import { Field } from '#renderer/parts/field/field.tsx';
import { useSayWithUndo } from '#renderer/parts/toast/use-say-with-undo.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

/** One culture becomes two: the part takes its weight along, and is known to come from the whole. */
export function SplitForm({
  culture,
  onDone,
}: {
  readonly culture: ValueOf<'cultures:open'>;
  readonly onDone: () => void;
}) {
  const { system } = useMeasures();
  const weight = useAmount('', (text) => typedWeight(text, system));
  const [name, setName] = useState('');
  const [rests, setRests] = useState(culture.rests ?? '');
  const [isTried, setIsTried] = useState(false);
  const sayWithUndo = useSayWithUndo();
  const split = useRequest('cultures:split', { showsFailure: true });

  function send(event: FormEvent) {
    event.preventDefault();
    setIsTried(true);
    const weight_g = amountOf(weight.typed);
    if (weight_g === undefined) return;
    split.mutate(
      { culture: culture.id, name, weight_g, ...(rests.trim() === '' ? {} : { rests: rests.trim() }) },
      {
        onSuccess: () => {
          onDone();
          void sayWithUndo(words.splitDone(name.trim()));
        },
      },
    );
  }

  const elsewhere = faultElsewhere(split.error, ['name', 'weight_g', 'rests']);
  return (
    <form className="form" onSubmit={send} noValidate>
      <Field label={words.partName} fault={faultAt(split.error, 'name')}>
        {(wiring) => <input {...wiring} value={name} onChange={({ target }) => setName(target.value)} />}
      </Field>
      <AmountField
        label={words.partWeight}
        amount={weight}
        isTried={isTried}
        missing={words.partMissing}
        fault={faultAt(split.error, 'weight_g')}
      />
      <Field label={words.partRests} fault={faultAt(split.error, 'rests')}>
        {(wiring) => <input {...wiring} value={rests} onChange={({ target }) => setRests(target.value)} />}
      </Field>
      {elsewhere === undefined ? null : (
        <p className="field-fault" role="alert">
          {elsewhere}
        </p>
      )}
      <div className="button-row">
        <Button type="submit" weight="main" disabled={split.isPending}>
          {words.split}
        </Button>
      </div>
    </form>
  );
}
