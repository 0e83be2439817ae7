import { Link } from 'wouter';
import { phrase } from '#core/words/phrase.ts';
import type { RecordedTable } from '#shared/recorded-tables.ts';

interface HistoryLinkProps {
  readonly table: RecordedTable;
  readonly id: string;
}

/** The way to everything that ever happened to one of several things in a list. */
export function RowHistoryLink({ table, id, name }: HistoryLinkProps & { readonly name: string }) {
  return (
    <p className="no-print">
      <Link href={`/history/${table}/${id}`} aria-label={phrase`What changed, and when: ${name}`}>
        {phrase`What changed, and when`}
      </Link>
    </p>
  );
}

/** At the end of a thing's page: the way to everything that ever happened to it. */
export function HistoryLink({ table, id }: HistoryLinkProps) {
  return (
    <p className="section no-print">
      <Link href={`/history/${table}/${id}`}>{phrase`What changed, and when`}</Link>
    </p>
  );
}
