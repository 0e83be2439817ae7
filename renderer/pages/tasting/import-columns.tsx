import { Field } from '#renderer/parts/field/field.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { importWords } from './import-words.ts';

type Columns = ValueOf<'scores:columns'>['columns'];

interface ImportColumnsProps {
  readonly columns: Columns;
  readonly attributes: readonly string[];
  readonly onChange: (head: string, meaning: string) => void;
}

/** What each column of the table is taken for, to be said otherwise. */
export function ImportColumns({ columns, attributes, onChange }: ImportColumnsProps) {
  const fields = Object.entries(importWords.fields);
  return (
    <div className="field-grid import-columns">
      {columns.map(({ head, meaning }, position) => {
        const attribute = attributes.find((name) => name.toLowerCase() === meaning.toLowerCase());
        const isKnown = meaning === '' || attribute !== undefined || Object.hasOwn(importWords.fields, meaning);
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: two columns may have one name, and their order never changes
          <Field key={`${position} ${head}`} label={importWords.column(head, position)}>
            {(wiring) => (
              <select {...wiring} value={attribute ?? meaning} onChange={({ target }) => onChange(head, target.value)}>
                {isKnown ? null : <option value={meaning}>{importWords.unknown(meaning)}</option>}
                {fields.map(([field, said]) => (
                  <option key={field} value={field}>
                    {said}
                  </option>
                ))}
                {attributes.map((name) => (
                  <option key={name} value={name}>
                    {name}
                  </option>
                ))}
                <option value="">{importWords.leaveOut}</option>
              </select>
            )}
          </Field>
        );
      })}
    </div>
  );
}
