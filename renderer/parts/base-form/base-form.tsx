import { type FormEvent, useState } from 'react';
import { useRequest } from '#renderer/app/use-request.ts';
import {
  isClear,
  type TypedAmount,
  typedStrength,
  typedTemperature,
  typedVolume,
  typedWithin,
} from '#renderer/format/typed-amount.ts';
import { shownSpan, typedSpan } from '#renderer/format/typed-cellar.ts';
import { useMeasures } from '#renderer/format/use-measures.ts';
import { AmountField } from '#renderer/parts/amount-field/amount-field.tsx';
import { type Amount, useAmount } from '#renderer/parts/amount-field/use-amount.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { faultAt, faultElsewhere } from '#renderer/parts/field/fault-at.ts';
import { Field } from '#renderer/parts/field/field.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { changeOf, givenOf, textChange } from './changed-amounts.ts';
import { words } from './words.ts';

interface BaseFormProps {
  readonly cultures: ValueOf<'cultures:list'>['cultures'];
  /** The one that is changed; null for a new one. */
  readonly base: ValueOf<'bases:list'>['bases'][number] | null;
  readonly onDone: () => void;
}

const alcoholRange = { unit: '% vol', low: 0, high: 20, example: '0.3' };
const fields = [
  'volume_mL',
  'sugarStart_g_per_L',
  'sugarNow_g_per_L',
  'temperature_C',
  'alcohol_pctVol',
  'plannedHours',
] as const;
type AmountName = (typeof fields)[number];

function shownOf(value: number | null | undefined, shown: (value: number) => string): string {
  return value == null ? '' : shown(value);
}

/** Starts a base, or changes one: only what was changed is sent. */
export function BaseForm({ cultures, base, onDone }: BaseFormProps) {
  const measures = useMeasures();
  const { system } = measures;
  const [name, setName] = useState(base?.name ?? '');
  const [culture, setCulture] = useState(base === null ? (cultures[0]?.id ?? '') : (base.culture?.id ?? ''));
  const [note, setNote] = useState(base?.note ?? '');
  const [wentIn, setWentIn] = useState(base?.wentIn ?? '');
  const [isTried, setIsTried] = useState(false);
  const sweetness = (text: string): TypedAmount => typedStrength(text, system);
  const amounts: Readonly<Record<AmountName, Amount>> = {
    volume_mL: useAmount(shownOf(base?.volume_mL, measures.volume), (text) => typedVolume(text, system)),
    sugarStart_g_per_L: useAmount(shownOf(base?.sugarStart_g_per_L, measures.sugar), sweetness),
    sugarNow_g_per_L: useAmount(shownOf(base?.sugarNow_g_per_L, measures.sugar), sweetness),
    temperature_C: useAmount(shownOf(base?.temperature_C, measures.temperature), (text) =>
      typedTemperature(text, system),
    ),
    alcohol_pctVol: useAmount(shownOf(base?.alcohol_pctVol, String), (text) => typedWithin(text, alcoholRange)),
    plannedHours: useAmount(shownOf(base?.plannedHours, shownSpan), (text) => typedSpan(text, 1, 8784)),
  };
  const hints: Readonly<Record<AmountName, string | undefined>> = {
    volume_mL: words.volumeHint[system],
    sugarStart_g_per_L: words.sugarHint[system],
    sugarNow_g_per_L: undefined,
    temperature_C: words.temperatureHint[system],
    alcohol_pctVol: undefined,
    plannedHours: words.plannedHint,
  };
  const labels: Readonly<Record<AmountName, string>> = {
    volume_mL: words.volume,
    sugarStart_g_per_L: words.sugarStart,
    sugarNow_g_per_L: words.sugarNow,
    temperature_C: words.temperature,
    alcohol_pctVol: words.alcohol,
    plannedHours: words.planned,
  };
  const start = useRequest('bases:start', { done: () => words.started, showsFailure: true });
  const change = useRequest('bases:change', { done: () => words.kept, showsFailure: true });
  const error = base === null ? start.error : change.error;

  function send(event: FormEvent) {
    event.preventDefault();
    setIsTried(true);
    const { volume_mL, ...others } = amounts;
    if (!isClear(volume_mL.typed, false) || Object.values(others).some(({ typed }) => !isClear(typed))) return;
    if (base === null) {
      start.mutate(
        {
          name,
          volume_mL: 0,
          ...givenOf(amounts),
          ...(culture === '' ? {} : { culture }),
          ...(note.trim() === '' ? {} : { note }),
          ...(wentIn.trim() === '' ? {} : { wentIn }),
        },
        { onSuccess: onDone },
      );
      return;
    }
    const { volume_mL: volume, ...changed } = changeOf(amounts);
    change.mutate(
      {
        base: base.id,
        revision: base.revision,
        ...changed,
        ...(volume == null ? {} : { volume_mL: volume }),
        ...(name === base.name ? {} : { name }),
        ...textChange('culture', base.culture?.id ?? '', culture),
        ...textChange('note', base.note ?? '', note),
        ...textChange('wentIn', base.wentIn ?? '', wentIn),
      },
      { onSuccess: onDone },
    );
  }

  const elsewhere = faultElsewhere(error, ['name', 'note', 'wentIn', ...fields]);
  return (
    <form className="form" onSubmit={send} noValidate>
      <Field label={words.name} fault={faultAt(error, 'name')}>
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
        {fields.map((field) => (
          <AmountField
            key={field}
            label={labels[field]}
            hint={hints[field]}
            amount={amounts[field]}
            isTried={isTried}
            missing={field === 'volume_mL' ? words.volumeMissing : undefined}
            fault={faultAt(error, field)}
          />
        ))}
      </div>
      <Field label={words.wentIn} hint={words.wentInHint} fault={faultAt(error, 'wentIn')}>
        {(wiring) => (
          <textarea {...wiring} rows={3} value={wentIn} onChange={({ target }) => setWentIn(target.value)} />
        )}
      </Field>
      <Field label={words.note} fault={faultAt(error, 'note')}>
        {(wiring) => <textarea {...wiring} rows={2} value={note} onChange={({ target }) => setNote(target.value)} />}
      </Field>
      {elsewhere === undefined ? null : (
        <p className="field-fault" role="alert">
          {elsewhere}
        </p>
      )}
      <div className="button-row">
        <Button type="submit" weight="main" disabled={start.isPending || change.isPending}>
          {base === null ? words.start : words.keep}
        </Button>
      </div>
    </form>
  );
}
