import { type FormEvent, useState } from 'react';
import { useRequest } from '#renderer/app/use-request.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { faultAt, faultElsewhere } from '#renderer/parts/field/fault-at.ts';
import { Field } from '#renderer/parts/field/field.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

/** The kitchen's name and the measures it is shown in. */
export function KitchenForm({ kitchen }: { readonly kitchen: ValueOf<'kitchen:open'> }) {
  const [name, setName] = useState(kitchen.name);
  const change = useRequest('kitchen:change', { done: () => words.kept, showsFailure: true });
  const elsewhere = faultElsewhere(change.error, ['name']);

  function send(event: FormEvent) {
    event.preventDefault();
    change.mutate({ name });
  }

  return (
    <form className="form data-form" onSubmit={send} noValidate>
      <Field label={words.name} fault={faultAt(change.error, 'name')}>
        {(wiring) => <input {...wiring} value={name} onChange={({ target }) => setName(target.value)} />}
      </Field>
      <Field label={words.measures}>
        {(wiring) => (
          <select
            {...wiring}
            value={kitchen.measures}
            onChange={({ target }) => change.mutate({ measures: target.value === 'us' ? 'us' : 'metric' })}
          >
            <option value="metric">{words.metric}</option>
            <option value="us">{words.us}</option>
          </select>
        )}
      </Field>
      {elsewhere === undefined ? null : (
        <p className="field-fault" role="alert">
          {elsewhere}
        </p>
      )}
      <div className="button-row">
        <Button type="submit" disabled={change.isPending || name.trim() === kitchen.name}>
          {words.keep}
        </Button>
      </div>
    </form>
  );
}
