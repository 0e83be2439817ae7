import { ButtonLink } from '#renderer/parts/button/button.tsx';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { RevealedAnswers } from './revealed-answers.tsx';
import { words } from './words.ts';

interface RevealedProps {
  readonly tasting: ValueOf<'tastings:open'>;
  readonly scores: ValueOf<'scores:list'>['scores'];
  readonly remarks: ValueOf<'remarks:list'>['remarks'];
}

function countsWords({ takenOut }: RevealedProps['tasting']['sampleList'][number]): string {
  return takenOut === null ? words.counted : words.takenOut(takenOut.why);
}

/** After the end: which code was which jar, and what was said of it. */
export function Revealed({ tasting, scores, remarks }: RevealedProps) {
  return (
    <section className="section">
      <h2>
        <Explained words={words.revealed} />
      </h2>
      <DataTable
        caption={words.revealed}
        rows={tasting.sampleList}
        rowKey={({ id }) => id}
        columns={[
          { head: words.code, cell: ({ code }) => code },
          { head: words.jar, cell: ({ jar }) => jar?.label ?? '' },
          { head: words.level, cell: ({ jar }) => jar?.level ?? '' },
          ...(tasting.sampleList.some(({ takenOut }) => takenOut !== null)
            ? [{ head: words.counts, cell: countsWords }]
            : []),
        ]}
      />
      <RevealedAnswers tasting={tasting} scores={scores} />
      {remarks.length === 0 ? null : (
        <>
          <h3>
            <Explained words={words.remarks} />
          </h3>
          <ul className="remark-list">
            {remarks.map(({ taster, sample, words: said }) => {
              const jar = tasting.sampleList.find(({ code }) => code === sample)?.jar;
              return (
                <li key={`${taster}-${sample}`}>
                  <strong>{jar === null || jar === undefined ? sample : jar.label}</strong>{' '}
                  <span className="soft">{taster}:</span> {said}
                </li>
              );
            })}
          </ul>
        </>
      )}
      {tasting.trial === null ? null : (
        <div className="button-row">
          <ButtonLink to={`/trials/${tasting.trial}/findings`} weight="main">
            {words.toFindings}
          </ButtonLink>
        </div>
      )}
    </section>
  );
}
