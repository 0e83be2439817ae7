import { Field } from '#renderer/parts/field/field.tsx';
import type { BottleDraft } from './bottle-words.ts';
import { words } from './words.ts';

interface BottleFormProps {
  readonly draft: BottleDraft;
  readonly faults: Readonly<Partial<Record<keyof BottleDraft, string>>>;
  readonly onChange: (draft: BottleDraft) => void;
}

/** What only the owner knows of a bottle. */
export function BottleForm({ draft, faults, onChange }: BottleFormProps) {
  const plain = (field: keyof BottleDraft, label: string, hint?: string, type = 'text') => (
    <Field label={label} hint={hint} fault={faults[field]}>
      {(wiring) => (
        <input
          {...wiring}
          type={type}
          maxLength={200}
          value={draft[field]}
          onChange={({ target }) => onChange({ ...draft, [field]: target.value })}
        />
      )}
    </Field>
  );
  return (
    <>
      {plain('name', words.name)}
      <Field label={words.base} hint={words.baseHint} fault={faults.base}>
        {(wiring) => (
          <textarea
            {...wiring}
            rows={2}
            maxLength={400}
            value={draft.base}
            onChange={({ target }) => onChange({ ...draft, base: target.value })}
          />
        )}
      </Field>
      <div className="field-grid">
        {plain('volume', words.volume)}
        {plain('bestBefore', words.bestBefore, words.bestBeforeHint, 'date')}
        {plain('lot', words.lot, words.lotHint)}
        {plain('maker', words.maker, words.makerHint)}
      </div>
    </>
  );
}
