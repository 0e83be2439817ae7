import { Button } from '#renderer/parts/button/button.tsx';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { importWords } from './import-words.ts';
import { refusedGroups } from './refused-groups.ts';

const mostShown = 500;

interface ImportPreviewProps {
  readonly preview: ValueOf<'scores:import'>;
  readonly rows: number;
  readonly isTaking: boolean;
  readonly onTake: () => void;
}

/** What taking the table would do: how many scores, and each place that can't be taken with its reason. */
export function ImportPreview({
  preview: { accepted, refused, refusedMore = 0 },
  rows,
  isTaking,
  onTake,
}: ImportPreviewProps) {
  const groups = refusedGroups(refused);
  const badRows = new Set(refused.map(({ row }) => row));
  const leavesOut =
    badRows.has(1) || refusedMore > 0
      ? importWords.takeGoodHeading(accepted)
      : importWords.takeGood(accepted, badRows.size);
  return (
    <section className="section">
      <h2>
        <Explained words={importWords.preview} />
      </h2>
      <p>
        <span className="soft">{importWords.rows(rows)}</span>{' '}
        <strong>{accepted === 0 ? importWords.none : importWords.good(accepted)}</strong>
      </p>
      {refused.length === 0 ? null : (
        <>
          <p className="field-fault" role="alert">
            {importWords.bad(refused.length + refusedMore)}
          </p>
          <DataTable
            caption={importWords.refused}
            rows={groups.slice(0, mostShown).map((one, place) => ({ ...one, place }))}
            rowKey={({ place }) => String(place)}
            columns={[
              { head: importWords.row, cell: ({ row }) => row },
              { head: importWords.where, cell: ({ column }) => column ?? '' },
              {
                head: importWords.why,
                cell: ({ message, cells }) => (
                  <span className="import-why">
                    {message}
                    {cells > 1 ? ` ${importWords.cells(cells)}` : null}
                  </span>
                ),
              },
            ]}
          />
          {groups.length > mostShown || refusedMore > 0 ? (
            <p className="soft">{importWords.more(Math.max(0, groups.length - mostShown) + refusedMore)}</p>
          ) : null}
        </>
      )}
      <p className="soft">
        {importWords.nothingYet} {refused.length > 0 && accepted > 0 ? importWords.mend : null}
      </p>
      {accepted === 0 ? null : (
        <div className="button-row">
          <Button weight={refused.length === 0 ? 'main' : 'plain'} disabled={isTaking} onClick={onTake}>
            {refused.length === 0 ? importWords.takeAll(accepted) : leavesOut}
          </Button>
        </div>
      )}
    </section>
  );
}
