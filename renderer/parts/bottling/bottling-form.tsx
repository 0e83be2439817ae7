import { type FormEvent, useState } from 'react';
import { bottlePressure } from '#core/ferment/bottle-pressure.ts';
import { type VesselKind, vesselKinds } from '#core/ferment/jar-input.ts';
import { useRequest } from '#renderer/app/use-request.ts';
import { amountOf, isClear, typedStrength, typedVolume, typedWithin } from '#renderer/format/typed-amount.ts';
import { typedPressure } from '#renderer/format/typed-cellar.ts';
import { useMeasures } from '#renderer/format/use-measures.ts';
import { vesselWords } from '#renderer/format/words.ts';
import { AmountField } from '#renderer/parts/amount-field/amount-field.tsx';
import { useAmount } from '#renderer/parts/amount-field/use-amount.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { Caution } from '#renderer/parts/caution/caution.tsx';
import { faultAt, faultElsewhere } from '#renderer/parts/field/fault-at.ts';
import { Field } from '#renderer/parts/field/field.tsx';
import { useSayWithUndo } from '#renderer/parts/toast/use-say-with-undo.ts';
import { words } from './words.ts';

/** What is bottled: a jar or a batch, and as sentences call it. */
export interface BottleSource {
  readonly owner: { readonly jar: string } | { readonly batch: string };
  readonly name: string;
  readonly lot?: string | null;
}

type Closure = Exclude<VesselKind, 'open-jar'>;
const closures = vesselKinds.filter((kind): kind is Closure => kind !== 'open-jar');

/** Bottles a jar or a batch; what pressure may build up stands there before anything is closed. */
export function BottlingForm({ source, onDone }: { readonly source: BottleSource; readonly onDone: () => void }) {
  const measures = useMeasures();
  const { system } = measures;
  const [kind, setKind] = useState<Closure>('swing-top');
  const [lot, setLot] = useState(source.lot ?? '');
  const [note, setNote] = useState('');
  const [isTried, setIsTried] = useState(false);
  const count = useAmount('', (text) => typedWithin(text, { unit: '', low: 1, high: 10_000, example: '6' }));
  const size = useAmount('', (text) => typedVolume(text, system));
  const rating = useAmount('', (text) => typedPressure(text, system));
  const sugar = useAmount('', (text) => typedStrength(text, system));
  const sayWithUndo = useSayWithUndo();
  const fill = useRequest('bottles:fill', { showsFailure: true });
  const [many, size_mL, ratedGauge_bar, sugar_g_per_L] = [count, size, rating, sugar].map(({ typed }) =>
    amountOf(typed),
  );
  const isWhole = many === undefined || Number.isInteger(many);
  const judged =
    size_mL === undefined ? null : bottlePressure({ closure: kind, size_mL, ratedGauge_bar, sugar_g_per_L });

  function keep(event: FormEvent) {
    event.preventDefault();
    setIsTried(true);
    if (many === undefined || size_mL === undefined || !isWhole) return;
    if (!isClear(rating.typed) || !isClear(sugar.typed)) return;
    fill.mutate(
      {
        ...source.owner,
        count: many,
        size_mL,
        closure: kind,
        ...(ratedGauge_bar === undefined ? {} : { ratedGauge_bar }),
        ...(sugar_g_per_L === undefined ? {} : { sugar_g_per_L }),
        ...(lot.trim() === '' ? {} : { lot: lot.trim() }),
        ...(note.trim() === '' ? {} : { note: note.trim() }),
      },
      {
        onSuccess: () => {
          onDone();
          void sayWithUndo(words.filled(source.name));
        },
      },
    );
  }

  const elsewhere = faultElsewhere(fill.error, ['count', 'size_mL', 'ratedGauge_bar', 'sugar_g_per_L', 'lot', 'note']);
  return (
    <form className="form" onSubmit={keep} noValidate>
      <div className="field-grid">
        <AmountField
          label={words.count}
          amount={count}
          isTried={isTried}
          missing={words.countFault}
          fault={isWhole ? faultAt(fill.error, 'count') : words.countFault}
        />
        <AmountField
          label={words.size}
          hint={words.sizeHint[system]}
          amount={size}
          isTried={isTried}
          missing={words.sizeMissing}
          fault={faultAt(fill.error, 'size_mL')}
        />
        <Field label={words.closure}>
          {(wiring) => (
            <select {...wiring} value={kind} onChange={({ target }) => setKind(target.value as Closure)}>
              {closures.map((each) => (
                <option key={each} value={each}>
                  {vesselWords[each]}
                </option>
              ))}
            </select>
          )}
        </Field>
        <AmountField label={words.rating} hint={words.ratingHint[system]} amount={rating} isTried={isTried} />
        <AmountField label={words.sugar} hint={words.sugarHint[system]} amount={sugar} isTried={isTried} />
        <Field label={words.lot} fault={faultAt(fill.error, 'lot')}>
          {(wiring) => <input {...wiring} maxLength={60} value={lot} onChange={({ target }) => setLot(target.value)} />}
        </Field>
      </div>
      <Field label={words.note} fault={faultAt(fill.error, 'note')}>
        {(wiring) => (
          <textarea
            {...wiring}
            rows={2}
            maxLength={4000}
            value={note}
            onChange={({ target }) => setNote(target.value)}
          />
        )}
      </Field>
      {judged?.gauge_bar == null ? null : <p className="figures">{words.bound(judged.gauge_bar, measures)}</p>}
      {judged?.cautions.map(({ code, message, basis }) => (
        <Caution key={code} basis={basis}>
          {message}
        </Caution>
      ))}
      {elsewhere === undefined ? null : (
        <p className="field-fault" role="alert">
          {elsewhere}
        </p>
      )}
      <div className="button-row">
        <Button type="submit" weight="main" disabled={fill.isPending}>
          {words.keep}
        </Button>
      </div>
    </form>
  );
}
