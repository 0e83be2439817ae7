import { type ReactNode, useId } from 'react';
import { glued } from '#renderer/format/glued.ts';
import { useExplainedLabel } from '#renderer/parts/term/explained-label.tsx';
import './field.css';

/** What a field hands to the input it wraps. */
export interface FieldWiring {
  readonly id: string;
  readonly 'aria-describedby': string | undefined;
  readonly 'aria-invalid': true | undefined;
}

interface FieldProps {
  readonly label: string;
  readonly hint?: string | undefined;
  /** Why this value can't be taken, from a failure with this field's path. */
  readonly fault?: string | undefined;
  readonly children: (wiring: FieldWiring) => ReactNode;
}

/** A label, its input, a hint below and the fault that belongs to it; the label's words of the trade are told while it is filled in. */
export function Field({ label, hint, fault, children }: FieldProps) {
  const id = useId();
  const { mark, words, describedBy } = useExplainedLabel<HTMLLabelElement>(label);
  const about = [
    hint === undefined ? '' : `${id}-hint`,
    fault === undefined ? '' : `${id}-fault`,
    describedBy ?? '',
  ].filter(Boolean);
  return (
    <div className="field">
      <label {...mark} htmlFor={id}>
        {words}
      </label>
      {children({
        id,
        'aria-describedby': about.length > 0 ? about.join(' ') : undefined,
        'aria-invalid': fault === undefined ? undefined : true,
      })}
      {hint === undefined ? null : (
        <p id={`${id}-hint`} className="soft small">
          {glued(hint)}
        </p>
      )}
      {fault === undefined ? null : (
        <p id={`${id}-fault`} className="field-fault" role="alert">
          {glued(fault)}
        </p>
      )}
    </div>
  );
}
