import { type FormEvent, useState } from 'react';
import { parsePrice } from '#core/units/parse-price.ts';
import { useRequest } from '#renderer/app/use-request.ts';
import { priceWords } from '#renderer/format/money.ts';
import { isClear, type TypedAmount, typedMass } from '#renderer/format/typed-amount.ts';
import type { Measures } from '#renderer/format/use-measures.ts';
import { AmountField } from '#renderer/parts/amount-field/amount-field.tsx';
import { useAmount } from '#renderer/parts/amount-field/use-amount.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { faultAt, faultElsewhere } from '#renderer/parts/field/fault-at.ts';
import { Field } from '#renderer/parts/field/field.tsx';
import type { Ingredient } from './ingredient-words.ts';
import { words } from './words.ts';

const said = words.stockForm;

interface StockFormProps {
  readonly row: Ingredient;
  readonly measures: Measures;
  readonly currency: string | null;
  readonly onDone: () => void;
}

function typedPrice(text: string): TypedAmount {
  if (text.trim() === '') return { kind: 'none' };
  const read = parsePrice(text);
  if (!read.ok) return { kind: 'fault', message: read.problem.message };
  return { kind: 'amount', value: 'price_per_kg' in read.value ? read.value.price_per_kg : read.value.price_per_L };
}

/** Both prices as they are now to be: what is not said of a price forgets it. */
function keptPrice(text: string): { price_per_kg: number | null; price_per_L: number | null } {
  const none = { price_per_kg: null, price_per_L: null };
  const read = parsePrice(text);
  return read.ok ? { ...none, ...read.value } : none;
}

/** What is on hand of an ingredient, and what it costs. */
export function StockForm({ row, measures, currency, onDone }: StockFormProps) {
  const onHand = useAmount(row.onHand_g === null ? '' : measures.mass(row.onHand_g), (text) => typedMass(text, row));
  const price = useAmount(priceWords(row, measures.system, currency) ?? '', typedPrice);
  const [money, setMoney] = useState(currency ?? '');
  const [isTried, setIsTried] = useState(false);
  const stock = useRequest('pantry:stock', { done: () => said.kept(row.name), showsFailure: true });
  const kitchen = useRequest('kitchen:change', { showsFailure: true });

  async function send(event: FormEvent) {
    event.preventDefault();
    setIsTried(true);
    if (!isClear(onHand.typed) || !isClear(price.typed)) return;
    try {
      if (money.trim() !== (currency ?? '')) {
        await kitchen.mutateAsync({ currency: money.trim() === '' ? null : money.trim() });
      }
      const counted = onHand.typed.kind === 'amount' ? onHand.typed.value : null;
      await stock.mutateAsync({
        name: row.name,
        ...(onHand.isChanged || row.short_g !== null ? { onHand_g: counted } : {}),
        ...(price.isChanged ? keptPrice(price.text) : {}),
      });
      onDone();
    } catch {
      // The failure stands at its field.
    }
  }

  const elsewhere = faultElsewhere(stock.error, ['onHand_g', 'price_per_kg', 'price_per_L']);
  return (
    <form className="form" onSubmit={(event) => void send(event)} noValidate>
      <AmountField
        label={said.onHand}
        hint={said.onHandHint}
        amount={onHand}
        isTried={isTried}
        fault={faultAt(stock.error, 'onHand_g')}
        shown={measures.mass}
      />
      <AmountField
        label={said.price}
        hint={said.priceHint}
        amount={price}
        isTried={isTried}
        fault={faultAt(stock.error, 'price_per_kg') ?? faultAt(stock.error, 'price_per_L')}
        shown={() => priceWords(keptPrice(price.text), measures.system, money.trim() || null) ?? words.priceUnknown}
      />
      <Field label={said.currency} hint={said.currencyHint} fault={faultAt(kitchen.error, 'currency')}>
        {(wiring) => (
          <input {...wiring} maxLength={12} value={money} onChange={({ target }) => setMoney(target.value)} />
        )}
      </Field>
      {elsewhere === undefined ? null : (
        <p className="field-fault" role="alert">
          {elsewhere}
        </p>
      )}
      <div className="button-row">
        <Button type="submit" weight="main" disabled={stock.isPending || kitchen.isPending}>
          {words.form.keep}
        </Button>
      </div>
    </form>
  );
}
