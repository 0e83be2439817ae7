import { typedSweetness } from '#renderer/format/typed-amount.ts';
import { AmountField } from '#renderer/parts/amount-field/amount-field.tsx';
import { type Amount, useAmount } from '#renderer/parts/amount-field/use-amount.ts';
import { strengthWords, words } from './words.ts';
import './course-parts.css';

/** The wanted sweetness as typed, and in °Bx once it is one. */
export interface WantedSweetness {
  readonly amount: Amount;
  readonly brix: number | null;
}

export function useWantedSweetness(): WantedSweetness {
  const amount = useAmount('', typedSweetness);
  return { amount, brix: amount.typed.kind === 'amount' ? amount.typed.value : null };
}

/** One short field: how sweet it should be, by whatever instrument or in grams. */
export function WantedSweetnessField({ wanted }: { readonly wanted: WantedSweetness }) {
  return (
    <div className="wanted-sweetness no-print">
      <AmountField label={words.wanted} hint={words.wantedHint} amount={wanted.amount} shown={strengthWords} />
    </div>
  );
}
