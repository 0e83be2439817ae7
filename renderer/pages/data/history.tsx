import { useState } from 'react';
import { Link } from 'wouter';
import { phrase } from '#core/words/phrase.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { dayAndTime } from '#renderer/format/moments.ts';
import { capital } from '#renderer/format/words.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { Button } from '#renderer/parts/button/button.tsx';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import { words } from './words.ts';

const aPage = 20;
const most = 500;

/** Every step that changed the kitchen, the newest first; each opens into its rows, and each row into its whole history. */
export function History() {
  const [limit, setLimit] = useState(aPage);
  const history = useAnswer('history:read', { limit }, { keepLast: true });
  return (
    <Answer of={history}>
      {({ steps }) => (
        <>
          <DataTable
            caption={words.historyTable}
            rows={steps}
            rowKey={({ step }) => String(step)}
            columns={[
              {
                head: phrase`What`,
                cell: ({ step, summary }) => <Link href={`/history/step/${step}`}>{capital(summary)}</Link>,
              },
              { head: phrase`How`, cell: ({ kind }) => words.kinds[kind] },
              { head: phrase`When`, cell: ({ at }) => dayAndTime(at) },
              { head: phrase`Rows`, cell: ({ rows }) => rows, isFigure: true },
            ]}
          />
          {steps.length < limit || limit >= most ? null : (
            <div className="button-row">
              <Button onClick={() => setLimit((now) => Math.min(most, now * 3))}>{words.more}</Button>
            </div>
          )}
        </>
      )}
    </Answer>
  );
}
