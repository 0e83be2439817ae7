import { phrase } from '#core/words/phrase.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { figureWords, intervalWords } from '#renderer/charts/figure-words.ts';
import { capital } from '#renderer/format/words.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

type Drivers = ValueOf<'findings:drivers'>;

/** So many pairs that moved together are read one by one; of more it is enough to know that there are. */
const fewTogether = 3;

function Told({ found }: { readonly found: Drivers }) {
  const tasters = [...new Set(found.drivers.flatMap((each) => each.tasters.map(({ taster }) => taster)))];
  const together = found.together.map((sentence) => <li key={sentence}>{sentence}</li>);
  const isManyTogether = together.length > fewTogether;
  return (
    <>
      <ul className="headline-doubts">
        {found.drivers.map(({ attribute, sentence }) => (
          <li key={attribute}>{sentence}</li>
        ))}
        {found.untold.map(({ attribute, why }) => (
          <li key={attribute}>{words.untoldDriver(attribute, why)}</li>
        ))}
        {isManyTogether ? null : together}
      </ul>
      {isManyTogether ? (
        <details>
          <summary>{words.together(found.together.length)}</summary>
          <ul className="headline-doubts">{together}</ul>
        </details>
      ) : null}
      {found.drivers.length === 0 ? null : (
        <details>
          <summary>{words.driversTable}</summary>
          <DataTable
            caption={words.driversTable}
            rows={found.drivers}
            rowKey={({ attribute }) => attribute}
            columns={[
              { head: phrase`Attribute`, cell: ({ attribute }) => capital(attribute) },
              { head: phrase`Panel`, cell: ({ slope }) => figureWords(slope), isFigure: true },
              { head: phrase`95 % interval`, cell: ({ low, high }) => intervalWords(low, high), isFigure: true },
              ...tasters.map((name) => ({
                head: name,
                cell: (row: Drivers['drivers'][number]) =>
                  figureWords(row.tasters.find(({ taster }) => taster === name)?.slope ?? null),
                isFigure: true,
              })),
            ]}
          />
          <p className="soft small">
            <Explained words={words.driversNote} />
          </p>
        </details>
      )}
    </>
  );
}

/** What drives liking, or why that can't be told. */
export function DriversFindings({ trial }: { readonly trial: string }) {
  const drivers = useAnswer('findings:drivers', { trial });
  return (
    <section className="section">
      <h2>
        <Explained words={words.drivers} />
      </h2>
      <Answer of={drivers}>{(found) => (found.needs === null ? <Told found={found} /> : <p>{found.needs}</p>)}</Answer>
    </section>
  );
}
