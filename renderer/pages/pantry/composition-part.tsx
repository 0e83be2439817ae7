import { AmountField } from '#renderer/parts/amount-field/amount-field.tsx';
import { faultAt } from '#renderer/parts/field/fault-at.ts';
import { Field } from '#renderer/parts/field/field.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { Failure } from '#shared/failure.ts';
import { type Composition, compositionFields, compositionLabels } from './use-composition.ts';
import { words } from './words.ts';

interface CompositionPartProps {
  readonly composition: Composition;
  readonly measures: string;
  readonly setMeasures: (text: string) => void;
  readonly measuresFault: string | undefined;
  readonly source: string;
  readonly setSource: (text: string) => void;
  readonly sourceFault: string | undefined;
  readonly isTried: boolean;
  readonly error: Failure | null;
}

/** What 100 g hold, what measures weigh, and where both come from. */
export function CompositionPart(props: CompositionPartProps) {
  const { composition, isTried, error } = props;
  return (
    <>
      <fieldset className="form">
        <legend className="field-legend">
          <Explained words={words.per100} />
        </legend>
        <p className="soft small">
          <Explained words={words.form.perHundred} />
        </p>
        <div className="field-grid">
          {compositionFields.map((field) => (
            <AmountField
              key={field}
              label={compositionLabels[field]}
              amount={composition.fields[field]}
              isTried={isTried}
              fault={faultAt(error, field)}
            />
          ))}
        </div>
      </fieldset>
      <Field
        label={words.form.measures}
        hint={words.form.measuresHint}
        fault={props.measuresFault ?? faultAt(error, 'measures')}
      >
        {(wiring) => (
          <textarea
            {...wiring}
            rows={3}
            value={props.measures}
            onChange={({ target }) => props.setMeasures(target.value)}
          />
        )}
      </Field>
      <Field
        label={words.form.source}
        hint={words.form.sourceHint}
        fault={props.sourceFault ?? faultAt(error, 'source')}
      >
        {(wiring) => (
          <input
            {...wiring}
            maxLength={400}
            value={props.source}
            onChange={({ target }) => props.setSource(target.value)}
          />
        )}
      </Field>
    </>
  );
}
