import { type FormEvent, useState } from 'react';
import { useRequest } from '#renderer/app/use-request.ts';
import { typedNumber } from '#renderer/format/number-field.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { faultAt, faultElsewhere } from '#renderer/parts/field/fault-at.ts';
import { Field } from '#renderer/parts/field/field.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

interface BaseFormProps {
  readonly cultures: ValueOf<'cultures:list'>['cultures'];
  readonly onDone: () => void;
}

const numbers = ['volume_mL', 'sugarStart_g_per_L', 'temperature_C'] as const;
const labels = {
  volume_mL: words.volume,
  sugarStart_g_per_L: words.sugar,
  temperature_C: words.temperature,
} as const;

/** Starts a base: a name, how much, from which culture, how sweet. */
export function BaseForm({ cultures, onDone }: BaseFormProps) {
  const [name, setName] = useState('');
  const [culture, setCulture] = useState(cultures[0]?.id ?? '');
  const [typed, setTyped] = useState({ volume_mL: '', sugarStart_g_per_L: '', temperature_C: '' });
  const [isTried, setIsTried] = useState(false);
  const start = useRequest('bases:start', { done: () => words.started, showsFailure: true });
  const read = {
    volume_mL: typedNumber(typed.volume_mL),
    sugarStart_g_per_L: typedNumber(typed.sugarStart_g_per_L),
    temperature_C: typedNumber(typed.temperature_C),
  };

  function send(event: FormEvent) {
    event.preventDefault();
    setIsTried(true);
    const { volume_mL, sugarStart_g_per_L: sugar, temperature_C: warmth } = read;
    if (volume_mL.kind !== 'number' || sugar.kind === 'other' || warmth.kind === 'other') return;
    start.mutate(
      {
        name,
        volume_mL: volume_mL.value,
        ...(culture === '' ? {} : { culture }),
        ...(sugar.kind === 'none' ? {} : { sugarStart_g_per_L: sugar.value }),
        ...(warmth.kind === 'none' ? {} : { temperature_C: warmth.value }),
      },
      { onSuccess: onDone },
    );
  }

  function faultOf(field: (typeof numbers)[number]): string | undefined {
    const { kind } = read[field];
    if (isTried && (kind === 'other' || (kind === 'none' && field === 'volume_mL'))) return words.notNumber;
    return faultAt(start.error, field);
  }

  const elsewhere = faultElsewhere(start.error, ['name', ...numbers]);
  return (
    <form className="form" onSubmit={send} noValidate>
      <Field label={words.name} fault={faultAt(start.error, 'name')}>
        {(wiring) => <input {...wiring} value={name} onChange={({ target }) => setName(target.value)} />}
      </Field>
      <Field label={words.culture}>
        {(wiring) => (
          <select {...wiring} value={culture} onChange={({ target }) => setCulture(target.value)}>
            <option value="">{words.noCulture}</option>
            {cultures.map((one) => (
              <option key={one.id} value={one.id}>
                {one.name}
              </option>
            ))}
          </select>
        )}
      </Field>
      <div className="field-grid">
        {numbers.map((field) => (
          <Field key={field} label={labels[field]} fault={faultOf(field)}>
            {(wiring) => (
              <input
                {...wiring}
                inputMode="decimal"
                value={typed[field]}
                onChange={({ target }) => setTyped((all) => ({ ...all, [field]: target.value }))}
              />
            )}
          </Field>
        ))}
      </div>
      {elsewhere === undefined ? null : (
        <p className="field-fault" role="alert">
          {elsewhere}
        </p>
      )}
      <div className="button-row">
        <Button type="submit" weight="main" disabled={start.isPending}>
          {words.startBase}
        </Button>
      </div>
    </form>
  );
}
