import { counting } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { Field } from '#renderer/parts/field/field.tsx';
import type { TableSource } from './use-table-source.ts';
import './table-source.css';

const words = {
  long: (from: string, lines: number) => phrase`${from}: ${counting(lines)} lines, too many to show here.`,
  pasted: phrase`The pasted table`,
  other: phrase`Take another table`,
} as const;

interface TableSourceFieldsProps {
  readonly source: TableSource;
  readonly label: string;
  readonly hint: string;
  readonly example: string;
  readonly fileLabel: string;
}

/** Where a table comes from: pasted or typed into a field, or from a file. A long one is named and not shown. */
export function TableSourceFields({ source, label, hint, example, fileLabel }: TableSourceFieldsProps) {
  const { text, long, fault, write, readFile } = source;
  return (
    <div className="section table-source">
      {long === null ? (
        <Field label={label} hint={hint}>
          {(wiring) => (
            <textarea
              {...wiring}
              className="table-source-text"
              rows={8}
              spellCheck={false}
              placeholder={example}
              value={text}
              onChange={({ target }) => write(target.value)}
            />
          )}
        </Field>
      ) : (
        <div className="button-row" role="status">
          <p>{words.long(long.file ?? words.pasted, long.lines)}</p>
          <Button onClick={() => write('')}>{words.other}</Button>
        </div>
      )}
      <Field label={fileLabel} fault={fault}>
        {(wiring) => (
          <input
            {...wiring}
            type="file"
            accept=".csv,.tsv,.txt,.json,application/json,text/csv,text/tab-separated-values,text/plain"
            onChange={({ target }) => void readFile(target.files?.[0])}
          />
        )}
      </Field>
    </div>
  );
}
