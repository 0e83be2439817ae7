import { type FormEvent, type ReactNode, useState } from 'react';
import { Button } from '#renderer/parts/button/button.tsx';
import { Field } from '#renderer/parts/field/field.tsx';
import { Sheet } from '#renderer/parts/sheet/sheet.tsx';

interface ReasonSheetProps {
  readonly title: string;
  readonly label: string;
  readonly hint?: string;
  readonly fault?: string | undefined;
  /** What is wrong beside the reason itself. */
  readonly elsewhere?: string | undefined;
  /** Reasons to tap instead of writing. */
  readonly reasons: readonly string[];
  readonly act: string;
  readonly weight: 'main' | 'grave';
  readonly isPending: boolean;
  readonly onSend: (reason: string) => void;
  readonly onClose: () => void;
  readonly children?: ReactNode;
}

/** Asks for a reason, tapped or in a few words, before something is done. */
export function ReasonSheet(props: ReasonSheetProps) {
  const { title, label, hint, fault, elsewhere, reasons, act, weight, isPending, onSend, onClose, children } = props;
  const [reason, setReason] = useState('');
  function send(event: FormEvent) {
    event.preventDefault();
    onSend(reason);
  }
  return (
    <Sheet title={title} onClose={onClose}>
      <form className="form" onSubmit={send} noValidate>
        {children}
        <Field label={label} {...(hint === undefined ? {} : { hint })} fault={fault}>
          {(wiring) => (
            <input
              {...wiring}
              autoComplete="off"
              maxLength={400}
              value={reason}
              onChange={({ target }) => setReason(target.value)}
            />
          )}
        </Field>
        <div className="chips">
          {reasons.map((each) => (
            <button key={each} type="button" className="chip" onClick={() => setReason(each)}>
              {each}
            </button>
          ))}
        </div>
        {elsewhere === undefined ? null : (
          <p className="field-fault" role="alert">
            {elsewhere}
          </p>
        )}
        <div className="button-row">
          <Button type="submit" weight={weight} disabled={isPending}>
            {act}
          </Button>
        </div>
      </form>
    </Sheet>
  );
}
