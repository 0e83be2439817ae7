import { type FormEvent, useState } from 'react';
import { useRequest } from '#renderer/app/use-request.ts';
import { amountOf, isClear } from '#renderer/format/typed-amount.ts';
import { shownSpan, typedSpan, typedWeight } from '#renderer/format/typed-cellar.ts';
import { useMeasures } from '#renderer/format/use-measures.ts';
import { AmountField } from '#renderer/parts/amount-field/amount-field.tsx';
import { useAmount } from '#renderer/parts/amount-field/use-amount.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { faultAt, faultElsewhere } from '#renderer/parts/field/fault-at.ts';
import { Field } from '#renderer/parts/field/field.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

type Culture = ValueOf<'cultures:list'>['cultures'][number];

const texts = ['name', 'kind', 'rests'] as const;
const hints = { name: undefined, kind: words.kindHint, rests: words.restsHint } as const;

/** Adds a culture, or changes one: what it is, how much of it, where it rests, how often it is refreshed. */
export function CultureForm({ culture, onDone }: { readonly culture: Culture | null; readonly onDone: () => void }) {
  const { system, mass } = useMeasures();
  const [typed, setTyped] = useState({
    name: culture?.name ?? '',
    kind: culture?.kind ?? '',
    rests: culture?.rests ?? '',
  });
  const [note, setNote] = useState(culture?.note ?? '');
  const [isTried, setIsTried] = useState(false);
  const weight = useAmount(culture?.weight_g == null ? '' : mass(culture.weight_g), (text) =>
    typedWeight(text, system),
  );
  const refresh = useAmount(culture?.refreshDays == null ? '' : shownSpan(culture.refreshDays * 24), (text) =>
    typedSpan(text, 6, 366 * 24),
  );
  const save = useRequest('cultures:save', { done: () => words.kept, showsFailure: true });

  function send(event: FormEvent) {
    event.preventDefault();
    setIsTried(true);
    if (!isClear(weight.typed) || !isClear(refresh.typed)) return;
    // Left as it stands, it is what was kept, to the gram.
    const weight_g = weight.isChanged ? amountOf(weight.typed) : (culture?.weight_g ?? amountOf(weight.typed));
    const hours = amountOf(refresh.typed);
    save.mutate(
      {
        ...(culture === null ? {} : { id: culture.id, revision: culture.revision }),
        ...(culture?.refreshedAt == null ? {} : { refreshedAt: culture.refreshedAt }),
        name: typed.name,
        kind: typed.kind,
        ...(weight_g === undefined ? {} : { weight_g }),
        ...(typed.rests.trim() === '' ? {} : { rests: typed.rests }),
        ...(note.trim() === '' ? {} : { note }),
        refreshDays: hours === undefined ? null : hours / 24,
      },
      { onSuccess: onDone },
    );
  }

  const elsewhere = faultElsewhere(save.error, [...texts, 'weight_g', 'refreshDays', 'note']);
  return (
    <form className="form" onSubmit={send} noValidate>
      {texts.map((field) => (
        <Field key={field} label={words[field]} hint={hints[field]} fault={faultAt(save.error, field)}>
          {(wiring) => (
            <input
              {...wiring}
              value={typed[field]}
              onChange={({ target }) => setTyped((all) => ({ ...all, [field]: target.value }))}
            />
          )}
        </Field>
      ))}
      <div className="field-grid">
        <AmountField
          label={words.weight}
          hint={words.weightHint[system]}
          amount={weight}
          isTried={isTried}
          fault={faultAt(save.error, 'weight_g')}
        />
        <AmountField
          label={words.refresh}
          hint={words.refreshHint}
          amount={refresh}
          isTried={isTried}
          fault={faultAt(save.error, 'refreshDays')}
        />
      </div>
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
