import { useRef } from 'react';
import { Button } from '#renderer/parts/button/button.tsx';
import { Field } from '#renderer/parts/field/field.tsx';
import { isHedonic } from '#shared/hedonic-words.ts';
import { type AttributeDraft, type DraftFaults, ownAttribute } from './tasting-draft.ts';
import { words } from './words.ts';

interface AttributeChoiceProps {
  readonly attributes: readonly AttributeDraft[];
  readonly faults: DraftFaults;
  readonly onChange: (attributes: readonly AttributeDraft[]) => void;
}

function scaleWords({ low, high, lowWord, highWord }: AttributeDraft): string {
  if (isHedonic({ low: Number(low), high: Number(high), lowWord })) return `${low}–${high}, ${words.hedonic}`;
  return words.scaleWords(low, lowWord, high, highWord);
}

const ownFields = [
  { field: 'name', label: words.ownName, fault: 'name' },
  { field: 'low', label: words.ownLow, fault: 'ends' },
  { field: 'lowWord', label: words.ownLowWord, fault: null },
  { field: 'high', label: words.ownHigh, fault: null },
  { field: 'highWord', label: words.ownHighWord, fault: null },
] as const;

/** What is scored: the usual attributes, each to be left out, and the maker's own. */
export function AttributeChoice({ attributes, faults, onChange }: AttributeChoiceProps) {
  const added = useRef(0);
  const change = (key: string, part: Partial<AttributeDraft>) =>
    onChange(attributes.map((one) => (one.key === key ? { ...one, ...part } : one)));
  return (
    <>
      <div className="attributes">
        {attributes
          .filter(({ isOwn }) => !isOwn)
          .map((one) => (
            <label key={one.key} className="check">
              <input
                type="checkbox"
                checked={one.isIn}
                onChange={({ target }) => change(one.key, { isIn: target.checked })}
              />
              <span>
                <strong>{one.name}</strong> <span className="soft small">{scaleWords(one)}</span>
              </span>
            </label>
          ))}
      </div>
      {attributes
        .filter(({ isOwn }) => isOwn)
        .map((one) => (
          <fieldset key={one.key} className="own-attribute">
            <legend className="unseen">{one.name === '' ? words.ownAttribute : one.name}</legend>
            <div className="field-grid is-tight">
              {ownFields.map(({ field, label, fault }) => (
                <Field
                  key={field}
                  label={label}
                  fault={fault === null ? undefined : faults[`attribute ${one.key} ${fault}`]}
                >
                  {(wiring) => (
                    <input
                      {...wiring}
                      maxLength={100}
                      inputMode={field === 'low' || field === 'high' ? 'decimal' : undefined}
                      value={one[field]}
                      onChange={({ target }) => change(one.key, { [field]: target.value })}
                    />
                  )}
                </Field>
              ))}
            </div>
            <Button weight="quiet" onClick={() => onChange(attributes.filter(({ key }) => key !== one.key))}>
              {words.removeOwn}
            </Button>
          </fieldset>
        ))}
      <div className="button-row">
        <Button
          onClick={() => {
            added.current += 1;
            onChange([...attributes, ownAttribute(`own ${added.current}`)]);
          }}
        >
          {words.ownAttribute}
        </Button>
      </div>
    </>
  );
}
