import { phrase } from '#core/words/phrase.ts';
import { Field } from '#renderer/parts/field/field.tsx';
import { type PaperName, paperNames } from './paper-size.ts';
import type { ChosenPaper } from './use-paper-size.ts';

/** Which paper lies in the printer. */
export function PaperField({ paper }: { readonly paper: ChosenPaper }) {
  return (
    <Field label={phrase`Paper`}>
      {(wiring) => (
        <select {...wiring} value={paper.name} onChange={({ target }) => paper.choose(target.value as PaperName)}>
          {Object.entries(paperNames).map(([name, words]) => (
            <option key={name} value={name}>
              {words}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}
