import { Button } from '#renderer/parts/button/button.tsx';
import { Field } from '#renderer/parts/field/field.tsx';
import type { Amount } from './use-amount.ts';
import { words } from './words.ts';
import './amount-field.css';

interface AmountFieldProps {
  readonly label: string;
  readonly hint?: string | undefined;
  readonly amount: Amount;
  /** The form was sent: an unclear amount is now a fault. */
  readonly isTried?: boolean;
  /** Said when nothing stands there and something must. */
  readonly missing?: string | undefined;
  /** From the desk. */
  readonly fault?: string | undefined;
  /** How the amount is understood, shown below it. */
  readonly shown?: ((value: number) => string) | undefined;
}

/** A field for an amount the way people write it: it says how it understands it, and asks where the unit looks slipped. */
export function AmountField({ label, hint, amount, isTried = false, missing, fault, shown }: AmountFieldProps) {
  const { typed, text } = amount;
  const isJudged = isTried || amount.isTouched;
  const own =
    typed.kind === 'doubt'
      ? typed.question
      : typed.kind === 'fault' && isJudged
        ? typed.message
        : typed.kind === 'none' && isTried
          ? missing
          : undefined;
  return (
    <div className="amount-field">
      <Field label={label} hint={hint} fault={own ?? fault}>
        {(wiring) => (
          <input
            {...wiring}
            autoComplete="off"
            value={text}
            onBlur={() => amount.touch()}
            onChange={({ target }) => amount.setText(target.value)}
          />
        )}
      </Field>
      {typed.kind === 'doubt' ? (
        <div className="button-row">
          <Button onClick={() => amount.setText(typed.insteadWords)}>{words.instead(typed.insteadWords)}</Button>
          <Button weight="quiet" onClick={() => amount.sayYes()}>
            {words.meant(text.trim())}
          </Button>
        </div>
      ) : null}
      {typed.kind === 'amount' && shown !== undefined ? (
        <p className="soft small">{words.understood(shown(typed.value))}</p>
      ) : null}
    </div>
  );
}
