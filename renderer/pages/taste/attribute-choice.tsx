import { Button } from '#renderer/parts/button/button.tsx';
import { Field } from '#renderer/parts/field/field.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { isHedonic } from '#shared/hedonic-words.ts';
import { type AttributeDraft, type DraftFaults, ownAttribute } from './tasting-draft.ts';
import { words } from './words.ts';

interface AttributeChoiceProps {
  readonly attributes: readonly AttributeDraft[];
  readonly faults: DraftFaults;
  readonly onChange: (attributes: readonly AttributeDraft[]) => void;
}

function scaleWords({ kind, low, high, lowWord, highWord }: AttributeDraft): string {
  if (kind === 'just-about-right') return words.steps;
  if (isHedonic({ low: Number(low), high: Number(high), lowWord })) return `${low}–${high}, ${words.hedonic}`;
  return words.scaleWords(low, lowWord, high, highWord);
}

function isLiking({ low, high, lowWord }: AttributeDraft): boolean {
  return isHedonic({ low: Number(low), high: Number(high), lowWord });
}

function KindOptions() {
  return (
    <>
      <option value="scale">{words.onScale}</option>
      <option value="just-about-right">{words.justAboutRight}</option>
    </>
  );
}

function kindOf(value: string): AttributeDraft['kind'] {
  return value === 'just-about-right' ? value : 'scale';
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
  const change = (key: string, part: Partial<AttributeDraft>) =>
    onChange(attributes.map((one) => (one.key === key ? { ...one, ...part } : one)));
  return (
    <>
      <dl className="kinds small">
        {words.kinds.map(([kind, meaning]) => (
          <div key={kind}>
            <dt>
              <Explained words={kind} />
            </dt>{' '}
            <dd className="soft">{meaning}</dd>
          </div>
        ))}
      </dl>
      <div className="attributes">
        {attributes
          .filter(({ isOwn }) => !isOwn)
          .map((one) => (
            <div key={one.key} className="attribute-row">
              <label className="check">
                <input
                  type="checkbox"
                  checked={one.isIn}
                  onChange={({ target }) => change(one.key, { isIn: target.checked })}
                />
                <span>
                  <strong>{one.name}</strong> <span className="soft small">{scaleWords(one)}</span>
                </span>
              </label>
              {isLiking(one) || !one.isIn ? null : (
                <select
                  aria-label={words.asked(one.name)}
                  value={one.kind}
                  onChange={({ target }) => change(one.key, { kind: kindOf(target.value) })}
                >
                  <KindOptions />
                </select>
              )}
            </div>
          ))}
      </div>
      {attributes
        .filter(({ isOwn }) => isOwn)
        .map((one) => (
          <fieldset key={one.key} className="own-attribute">
            <legend className="unseen">{one.name === '' ? words.ownAttribute : one.name}</legend>
            <div className="field-grid is-tight">
              <Field label={words.ownAsked}>
                {(wiring) => (
                  <select
                    {...wiring}
                    value={one.kind}
                    onChange={({ target }) => change(one.key, { kind: kindOf(target.value) })}
                  >
                    <KindOptions />
                  </select>
                )}
              </Field>
              {ownFields
                .filter(({ field }) => field === 'name' || one.kind === 'scale')
                .map(({ field, label, fault }) => (
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
        <Button onClick={() => onChange([...attributes, ownAttribute(attributes)])}>{words.ownAttribute}</Button>
      </div>
    </>
  );
}
