import { AmountField } from '#renderer/parts/amount-field/amount-field.tsx';
import type { Amount } from '#renderer/parts/amount-field/use-amount.ts';
import { Field } from '#renderer/parts/field/field.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { GravityReading, Stem } from './gravity-reading.ts';
import { words } from './words.ts';

interface GravityPartProps {
  readonly stem: Stem;
  readonly setStem: (stem: Stem) => void;
  readonly sample: Amount;
  /** The line says a temperature already. */
  readonly isInLine: boolean;
  readonly gravity: GravityReading;
}

/** For what temperature the hydrometer is made, how warm the sample is, and what the reading then is at 20 °C. */
export function GravityPart({ stem, setStem, sample, isInLine, gravity }: GravityPartProps) {
  return (
    <fieldset className="reading-more">
      <legend className="field-legend">
        <Explained words={words.gravity.title} />
      </legend>
      <div className="field-grid">
        <Field label={words.gravity.stem} hint={words.gravity.stemHint}>
          {(wiring) => (
            <select {...wiring} value={stem} onChange={({ target }) => setStem(target.value as Stem)}>
              {Object.entries(words.gravity.stems).map(([value, name]) => (
                <option key={value} value={value}>
                  {name}
                </option>
              ))}
            </select>
          )}
        </Field>
        {stem === 'asRead' ? null : (
          <AmountField
            label={words.gravity.sample}
            hint={isInLine ? words.gravity.inLine : words.gravity.sampleHint}
            amount={sample}
          />
        )}
      </div>
      <p role="status" className={gravity.isFault ? 'field-fault' : undefined}>
        {gravity.said}
      </p>
    </fieldset>
  );
}
