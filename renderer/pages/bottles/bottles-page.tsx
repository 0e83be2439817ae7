import { Link } from 'wouter';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { type Bottling, BottlingRow } from '#renderer/parts/bottling/bottling-row.tsx';
import { ButtonLink } from '#renderer/parts/button/button.tsx';
import { EmptyState } from '#renderer/parts/empty-state/empty-state.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { RowList } from '#renderer/parts/row-list/row-list.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { words } from './words.ts';

function Source({ from }: Pick<Bottling, 'from'>) {
  return from.kind === 'jar' ? (
    <Link href={`/jars/${from.jar}`}>{words.jar(from.label, from.question)}</Link>
  ) : (
    <Link href={`/house-recipes/${from.recipe}`}>{words.batch(from.name, from.version)}</Link>
  );
}

function BottlingList({ title, bottlings }: { readonly title: string; readonly bottlings: readonly Bottling[] }) {
  if (bottlings.length === 0) return null;
  return (
    <section className="section">
      <h2>{title}</h2>
      <RowList label={title}>
        {bottlings.map((bottling) => (
          <BottlingRow key={bottling.id} bottling={bottling} source={<Source from={bottling.from} />} />
        ))}
      </RowList>
    </section>
  );
}

/** All bottles: those that wait to be tried, and those that were. */
export function BottlesPage() {
  const bottles = useAnswer('bottles:list', {});
  return (
    <>
      <PageHead above={<Link href="/bases">{words.above}</Link>} title={words.title} lead={words.lead} />
      <Answer of={bottles}>
        {({ bottlings }) =>
          bottlings.length === 0 ? (
            <EmptyState
              title={words.empty.title}
              actions={
                <>
                  <ButtonLink to="/trials" weight="main">
                    {words.empty.toTrials}
                  </ButtonLink>
                  <ButtonLink to="/house-recipes">{words.empty.toRecipes}</ButtonLink>
                </>
              }
            >
              <p>
                <Explained words={words.empty.line} />
              </p>
            </EmptyState>
          ) : (
            <>
              <BottlingList title={words.waiting} bottlings={bottlings.filter(({ left }) => left > 0)} />
              <BottlingList title={words.done} bottlings={bottlings.filter(({ left }) => left === 0)} />
            </>
          )
        }
      </Answer>
    </>
  );
}
