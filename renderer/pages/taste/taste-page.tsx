import { useAnswer } from '#renderer/app/use-answer.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import { TrialHead } from '#renderer/parts/trial-head/trial-head.tsx';
import { words } from './words.ts';

/** The tastings of a trial and how far their scores have come. */
export function TastePage({ id }: { readonly id: string }) {
  const trial = useAnswer('trials:open', { trial: id });
  const tastings = useAnswer('tastings:list', {});
  return (
    <Answer of={trial}>
      {(value) => (
        <>
          <TrialHead trial={value} step="taste" />
          <Answer of={tastings}>
            {({ tastings: all }) => {
              const own = all.filter((tasting) => tasting.trial === id);
              if (own.length === 0) return <p className="soft">{words.none}</p>;
              return (
                <DataTable
                  caption={words.tastings}
                  columns={[
                    { head: words.name, cell: ({ name }) => name },
                    { head: words.tasters, cell: ({ tasters }) => tasters, isFigure: true },
                    {
                      head: words.scores,
                      cell: ({ scores, expected }) => words.ofExpected(scores, expected),
                      isFigure: true,
                    },
                    { head: words.state, cell: ({ closedAt }) => (closedAt === null ? words.open : words.closed) },
                  ]}
                  rows={own}
                  rowKey={({ id: tasting }) => tasting}
                />
              );
            }}
          </Answer>
        </>
      )}
    </Answer>
  );
}
