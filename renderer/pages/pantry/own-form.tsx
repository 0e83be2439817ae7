import { type FormEvent, useState } from 'react';
import { useRequest } from '#renderer/app/use-request.ts';
import { capital, ingredientKindWords } from '#renderer/format/words.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { faultAt, faultElsewhere } from '#renderer/parts/field/fault-at.ts';
import { Field } from '#renderer/parts/field/field.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { allergens as allAllergens } from '#shared/closed-lists.ts';
import { CompositionPart } from './composition-part.tsx';
import type { Ingredient } from './ingredient-words.ts';
import { measureLines, readMeasures } from './read-measures.ts';
import { compositionFields, useComposition } from './use-composition.ts';
import { words } from './words.ts';

const unknown = { water_g: null, sugars_g: null, glucose_g: null, fructose_g: null, sucrose_g: null };
const passedOn = ['fibre_g', 'protein_g', 'fat_g', 'ash_g'] as const;

/** What this form does not ask stays as it was. */
function untouched(row: Ingredient | null): Partial<Record<(typeof passedOn)[number], number>> {
  const kept: Partial<Record<(typeof passedOn)[number], number>> = {};
  for (const field of passedOn) {
    const value = row?.[field] ?? null;
    if (value !== null) kept[field] = value;
  }
  return kept;
}

interface OwnFormProps {
  /** The one that is changed; null for a new one. */
  readonly row: Ingredient | null;
  readonly name?: string;
  readonly onDone: () => void;
}

/** An ingredient of the owner's own. */
export function OwnForm({ row, name: firstName = '', onDone }: OwnFormProps) {
  const [name, setName] = useState(row?.name ?? firstName);
  const [kind, setKind] = useState<Ingredient['kind']>(row?.kind ?? 'fruit');
  const composition = useComposition(row ?? unknown);
  const [measures, setMeasures] = useState(measureLines(row?.measures ?? []));
  const [source, setSource] = useState(row?.source ?? '');
  const [allergens, setAllergens] = useState(row?.allergens ?? []);
  const [note, setNote] = useState(row?.note ?? '');
  const [isTried, setIsTried] = useState(false);
  const save = useRequest('pantry:save', { done: () => words.form.kept(name.trim()), showsFailure: true });
  const read = readMeasures(measures);

  function send(event: FormEvent) {
    event.preventDefault();
    setIsTried(true);
    if (!composition.isClear || !read.ok) return;
    save.mutate(
      {
        ...(row?.id == null || row.revision === null ? {} : { id: row.id, revision: row.revision }),
        name,
        kind,
        ...untouched(row),
        ...composition.given,
        allergens,
        measures: read.measures,
        ...(source.trim() === '' ? {} : { source: source.trim() }),
        ...(note.trim() === '' ? {} : { note }),
      },
      { onSuccess: onDone },
    );
  }

  const elsewhere = faultElsewhere(save.error, ['name', ...compositionFields, 'measures', 'source', 'note']);
  return (
    <form className="form" onSubmit={send} noValidate>
      <Field label={words.form.name} fault={faultAt(save.error, 'name')}>
        {(wiring) => <input {...wiring} value={name} onChange={({ target }) => setName(target.value)} />}
      </Field>
      <Field label={words.form.kind}>
        {(wiring) => (
          <select {...wiring} value={kind} onChange={({ target }) => setKind(target.value as Ingredient['kind'])}>
            {Object.entries(ingredientKindWords).map(([value, shown]) => (
              <option key={value} value={value}>
                {shown}
              </option>
            ))}
          </select>
        )}
      </Field>
      <CompositionPart
        composition={composition}
        measures={measures}
        setMeasures={setMeasures}
        measuresFault={isTried && !read.ok ? read.message : undefined}
        source={source}
        setSource={setSource}
        sourceFault={undefined}
        isTried={isTried}
        error={save.error}
      />
      <fieldset>
        <legend className="field-legend">
          <Explained words={words.form.allergens} />
        </legend>
        <div className="field-grid is-tight">
          {allAllergens.map((allergen) => (
            <label key={allergen} className="check">
              <input
                type="checkbox"
                checked={allergens.includes(allergen)}
                onChange={({ target }) =>
                  setAllergens((all) => (target.checked ? [...all, allergen] : all.filter((one) => one !== allergen)))
                }
              />
              {capital(allergen)}
            </label>
          ))}
        </div>
      </fieldset>
      <Field label={words.form.note} fault={faultAt(save.error, 'note')}>
        {(wiring) => <textarea {...wiring} rows={2} value={note} onChange={({ target }) => setNote(target.value)} />}
      </Field>
      {elsewhere === undefined ? null : (
        <p className="field-fault" role="alert">
          {elsewhere}
        </p>
      )}
      <div className="button-row">
        <Button type="submit" weight="main" disabled={save.isPending}>
          {words.form.keep}
        </Button>
      </div>
    </form>
  );
}
