import { phrase } from '#core/words/phrase.ts';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { dPrimeWords } from './d-prime-words.ts';
import type { Method } from './words.ts';

type Result = NonNullable<ValueOf<'discriminations:open'>['result']>;

/** d′ and its interval, and what they mean. */
export function DPrimeDetails({ result, method }: { readonly result: Result; readonly method: Method }) {
  const { best, interval, luck, explanation } = dPrimeWords(result, method);
  return (
    <div className="subsection">
      <DataTable
        caption={phrase`The size of the difference`}
        rows={[
          { name: phrase`Best guess of d′`, value: best },
          { name: '95 % interval', value: interval },
          { name: phrase`Guessing would do as well`, value: luck },
        ]}
        rowKey={({ name }) => name}
        columns={[
          { head: phrase`Figure`, cell: ({ name }) => name },
          { head: phrase`Value`, cell: ({ value }) => value },
        ]}
      />
      {explanation.map((line) => (
        <p key={line}>
          <Explained words={line} />
        </p>
      ))}
    </div>
  );
}
