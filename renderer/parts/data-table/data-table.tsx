import type { ReactNode } from 'react';
import { gluedText } from '#renderer/format/glued.ts';
import { Explained } from '#renderer/parts/term/explained.tsx';
import './data-table.css';

export interface Column<Row> {
  readonly head: string;
  readonly cell: (row: Row) => ReactNode;
  /** Figures stand at the end of their column. */
  readonly isFigure?: boolean;
}

interface DataTableProps<Row> {
  readonly caption: string;
  readonly columns: readonly Column<Row>[];
  readonly rows: readonly Row[];
  readonly rowKey: (row: Row) => string;
}

/** A table whose first column names the row. Where it is too wide it scrolls in itself, never the page. */
export function DataTable<Row>({ caption, columns, rows, rowKey }: DataTableProps<Row>) {
  const [first, ...others] = columns;
  if (first === undefined) return null;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reachable by keyboard
    <section className="data-table" aria-label={caption} tabIndex={0}>
      <table>
        <caption className="unseen">{caption}</caption>
        <thead>
          <tr>
            {columns.map(({ head, isFigure }) => (
              <th key={head} scope="col" className={isFigure ? 'is-figure' : undefined}>
                <Explained words={head} />
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={rowKey(row)}>
              <th scope="row">{gluedText(first.cell(row))}</th>
              {others.map(({ head, cell, isFigure }) => (
                <td key={head} className={isFigure ? 'is-figure' : undefined}>
                  {gluedText(cell(row))}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
