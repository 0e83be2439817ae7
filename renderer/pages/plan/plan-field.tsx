import type { InputHTMLAttributes, ReactNode } from 'react';
import { glued } from '#renderer/format/glued.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { Field, type FieldWiring } from '#renderer/parts/field/field.tsx';
import { explained } from '#renderer/parts/term/explained.tsx';
import type { Sentence } from './judge-plan.ts';
import { usePlan } from './plan-context.ts';

function WaysOut({ sentence }: { readonly sentence: Sentence | undefined }) {
  const { change } = usePlan();
  if (sentence === undefined || sentence.ways.length === 0) return null;
  return (
    <div className="button-row plan-ways">
      {sentence.ways.map((way) => (
        <Button key={way.words} onClick={() => change(way.change)}>
          {way.words}
        </Button>
      ))}
    </div>
  );
}

interface PlanFieldProps {
  /** The place in the plan, such as levels.1.value. */
  readonly at: string;
  readonly label: string;
  readonly hint?: string | undefined;
  /** Where the field is too narrow for a sentence, the caller shows it below the row with PlanSentence. */
  readonly saysBelow?: boolean | undefined;
  readonly children: (wiring: FieldWiring) => ReactNode;
}

/** What a field is described by, with the sentence below its row. */
function faulty({ 'aria-describedby': about }: FieldWiring, at: string) {
  return { 'aria-describedby': [about ?? '', sentenceId(at)].join(' ').trim(), 'aria-invalid': true } as const;
}

/** A field of the plan with its sentence and the ways out of it. */
export function PlanField({ at, label, hint, saysBelow = false, children }: PlanFieldProps) {
  const { sentenceAt } = usePlan();
  const sentence = sentenceAt(at);
  if (saysBelow) {
    return (
      <div className="plan-field" data-at={at}>
        <Field label={label} hint={hint}>
          {(wiring) => children(sentence === undefined ? wiring : { ...wiring, ...faulty(wiring, at) })}
        </Field>
      </div>
    );
  }
  return (
    <div className="plan-field" data-at={at}>
      <Field label={label} hint={hint} fault={sentence?.message}>
        {children}
      </Field>
      <WaysOut sentence={sentence} />
    </div>
  );
}

interface PlanTextProps
  extends Omit<InputHTMLAttributes<HTMLInputElement>, 'onChange' | 'value'>,
    Pick<PlanFieldProps, 'at' | 'label' | 'hint' | 'saysBelow'> {
  readonly value: string;
  readonly onType: (text: string) => void;
}

/** A line to type in. */
export function PlanText({ at, label, hint, saysBelow, value, onType, ...rest }: PlanTextProps) {
  return (
    <PlanField at={at} label={label} hint={hint} saysBelow={saysBelow}>
      {(wiring) => (
        <input autoComplete="off" {...rest} {...wiring} value={value} onChange={({ target }) => onType(target.value)} />
      )}
    </PlanField>
  );
}

interface PlanChoiceProps<Word extends string> extends Pick<PlanFieldProps, 'at' | 'label' | 'hint' | 'saysBelow'> {
  readonly value: Word;
  readonly options: readonly (readonly [Word, string])[];
  readonly onChoose: (word: Word) => void;
}

/** One of a few words. */
export function PlanChoice<Word extends string>(props: PlanChoiceProps<Word>) {
  const { at, label, hint, saysBelow, value, options, onChoose } = props;
  return (
    <PlanField at={at} label={label} hint={hint} saysBelow={saysBelow}>
      {(wiring) => (
        <select
          {...wiring}
          value={value}
          onChange={({ target }) => {
            const chosen = options.find(([word]) => word === target.value);
            if (chosen !== undefined) onChoose(chosen[0]);
          }}
        >
          {options.map(([word, said]) => (
            <option key={word} value={word}>
              {said}
            </option>
          ))}
        </select>
      )}
    </PlanField>
  );
}

interface PlanGroupProps {
  readonly at: string;
  readonly legend: ReactNode;
  readonly className?: string;
  readonly children: ReactNode;
}

/** The id of the sentence at a place, for what it describes. */
export function sentenceId(at: string): string {
  return `plan-says-${at.replaceAll('.', '-')}`;
}

/** The sentence about a place that is no single field. */
export function PlanSentence({ at }: { readonly at: string }) {
  const { sentenceAt } = usePlan();
  const sentence = sentenceAt(at);
  if (sentence === undefined) return null;
  return (
    <>
      <p id={sentenceId(at)} className="field-fault" role="alert">
        {glued(sentence.message)}
      </p>
      <WaysOut sentence={sentence} />
    </>
  );
}

/** Fields that belong together, with a sentence that is about all of them. */
export function PlanGroup({ at, legend, className = '', children }: PlanGroupProps) {
  const { sentenceAt } = usePlan();
  const isSaid = sentenceAt(at) !== undefined;
  return (
    <fieldset className={`plan-group ${className}`} data-at={at} aria-describedby={isSaid ? sentenceId(at) : undefined}>
      <legend className="field-legend">{explained(legend)}</legend>
      {children}
      <PlanSentence at={at} />
    </fieldset>
  );
}
