import { type FormEvent, useState } from 'react';
import { useRequest } from '#renderer/app/use-request.ts';
import { capital } from '#renderer/format/words.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { faultAt, faultElsewhere } from '#renderer/parts/field/fault-at.ts';
import { Field } from '#renderer/parts/field/field.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { allergens } from '#shared/closed-lists.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

type Taster = ValueOf<'tasters:list'>['tasters'][number];

interface TasterFormProps {
  /** The one that is changed; null for a new one. */
  readonly taster: Taster | null;
  /** Told the taster's id once it is kept. */
  readonly onDone: (taster: string) => void;
}

/** A taster's name and what they avoid. */
export function TasterForm({ taster, onDone }: TasterFormProps) {
  const [name, setName] = useState(taster?.name ?? '');
  const [avoids, setAvoids] = useState(taster?.avoids ?? []);
  const [avoidsAlcohol, setAvoidsAlcohol] = useState(taster?.avoidsAlcohol ?? false);
  const [note, setNote] = useState(taster?.note ?? '');
  const save = useRequest('tasters:save', { done: () => words.kept, showsFailure: true });

  function send(event: FormEvent) {
    event.preventDefault();
    save.mutate(
      {
        ...(taster === null ? {} : { id: taster.id, revision: taster.revision }),
        name,
        avoids,
        avoidsAlcohol,
        ...(note.trim() === '' ? {} : { note }),
      },
      { onSuccess: (value) => onDone(value.taster) },
    );
  }

  const elsewhere = faultElsewhere(save.error, ['name', 'note']);
  return (
    <form className="form" onSubmit={send} noValidate>
      <Field label={words.name} fault={faultAt(save.error, 'name')}>
        {(wiring) => <input {...wiring} value={name} onChange={({ target }) => setName(target.value)} />}
      </Field>
      <fieldset>
        <legend className="field-legend">
          <Explained words={words.avoids} />
        </legend>
        <div className="field-grid is-tight">
          {allergens.map((allergen) => (
            <label key={allergen} className="check">
              <input
                type="checkbox"
                checked={avoids.includes(allergen)}
                onChange={({ target }) =>
                  setAvoids((all) => (target.checked ? [...all, allergen] : all.filter((one) => one !== allergen)))
                }
              />
              {capital(allergen)}
            </label>
          ))}
          <label className="check">
            <input
              type="checkbox"
              checked={avoidsAlcohol}
              onChange={({ target }) => setAvoidsAlcohol(target.checked)}
            />
            {words.avoidsAlcohol}
          </label>
        </div>
      </fieldset>
      <Field label={words.note} fault={faultAt(save.error, 'note')}>
        {(wiring) => <textarea {...wiring} rows={2} value={note} onChange={({ target }) => setNote(target.value)} />}
      </Field>
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
