import { RowList } from '#renderer/parts/row-list/row-list.tsx';
import type { Need } from './need.ts';
import { NeedRow } from './need-row.tsx';

interface NeedListProps {
  readonly title: string;
  readonly needs: readonly Need[];
  readonly now: number;
}

/** What is wanted at one time: overdue, today, later, put off. Empty lists are left out. */
export function NeedList({ title, needs, now }: NeedListProps) {
  if (needs.length === 0) return null;
  return (
    <section className="section">
      <h2>{title}</h2>
      <RowList label={title}>
        {needs.map((need) => (
          <NeedRow key={need.key} need={need} now={now} />
        ))}
      </RowList>
    </section>
  );
}
