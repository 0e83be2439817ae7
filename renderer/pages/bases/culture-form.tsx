import { type FormEvent, useState } from 'react';
import { useRequest } from '#renderer/app/use-request.ts';
import { typedNumber } from '#renderer/format/number-field.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { faultAt, faultElsewhere } from '#renderer/parts/field/fault-at.ts';
import { Field } from '#renderer/parts/field/field.tsx';
import { words } from './words.ts';

const fields = ['name', 'kind', 'weight_g', 'rests'] as const;
const labels = { name: words.name, kind: words.kind, weight_g: words.weight, rests: words.rests } as const;

/** Adds a culture: what it is, how much of it, where it rests. */
export function CultureForm({ onDone }: { readonly onDone: () => void }) {
  const [typed, setTyped] = useState({ name: '', kind: '', weight_g: '', rests: '' });
  const [isTried, setIsTried] = useState(false);
  const save = useRequest('cultures:save', { done: () => words.kept, showsFailure: true });
  const weight = typedNumber(typed.weight_g);

  function send(event: FormEvent) {
    event.preventDefault();
    setIsTried(true);
    if (weight.kind === 'other') return;
    save.mutate(
      {
        name: typed.name,
        kind: typed.kind,
        ...(weight.kind === 'none' ? {} : { weight_g: weight.value }),
        ...(typed.rests.trim() === '' ? {} : { rests: typed.rests }),
      },
      { onSuccess: onDone },
    );
  }

  const elsewhere = faultElsewhere(save.error, fields);
  return (
    <form className="form" onSubmit={send} noValidate>
      {fields.map((field) => (
        <Field
          key={field}
          label={labels[field]}
          hint={field === 'kind' ? words.kindHint : undefined}
          fault={
            field === 'weight_g' && isTried && weight.kind === 'other' ? words.notNumber : faultAt(save.error, field)
          }
        >
          {(wiring) => (
            <input
              {...wiring}
              inputMode={field === 'weight_g' ? 'decimal' : 'text'}
              value={typed[field]}
              onChange={({ target }) => setTyped((all) => ({ ...all, [field]: target.value }))}
            />
          )}
        </Field>
      ))}
      {elsewhere === undefined ? null : (
        <p className="field-fault" role="alert">
          {elsewhere}
        </p>
      )}
      <div className="button-row">
        <Button type="submit" weight="main" disabled={save.isPending}>
          {words.keep}
        </Button>
      </div>
    </form>
  );
}
