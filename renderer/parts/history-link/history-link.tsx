import { Link } from 'wouter';
import { phrase } from '#core/words/phrase.ts';

interface HistoryLinkProps {
  readonly table: 'jars' | 'trials' | 'tasters' | 'house_recipes' | 'bases' | 'cultures';
  readonly id: string;
}

/** At the end of a thing's page: the way to everything that ever happened to it. */
export function HistoryLink({ table, id }: HistoryLinkProps) {
  return (
    <p className="section">
      <Link href={`/history/${table}/${id}`}>{phrase`What changed, and when`}</Link>
    </p>
  );
}
