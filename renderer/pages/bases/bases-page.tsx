import { useState } from 'react';
import { hoursBetween } from '#core/trial/moment.ts';
import { phrase } from '#core/words/phrase.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { useRequest } from '#renderer/app/use-request.ts';
import { dateWords, spanWords } from '#renderer/format/moments.ts';
import { useMeasures } from '#renderer/format/use-measures.ts';
import { useNow } from '#renderer/format/use-now.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { BaseForm } from '#renderer/parts/base-form/base-form.tsx';
import { Button, ButtonLink } from '#renderer/parts/button/button.tsx';
import { CultureForm } from '#renderer/parts/culture-form/culture-form.tsx';
import { EmptyState } from '#renderer/parts/empty-state/empty-state.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { Row, RowList } from '#renderer/parts/row-list/row-list.tsx';
import { Sheet } from '#renderer/parts/sheet/sheet.tsx';
import { SampleMark } from '#renderer/parts/tape/tape.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

type Base = ValueOf<'bases:list'>['bases'][number];
type Culture = ValueOf<'cultures:list'>['cultures'][number];

function BaseRow({ base }: { readonly base: Base }) {
  const { volume, sugar } = useMeasures();
  const now = useNow();
  const strain = useRequest('bases:strain', { done: () => words.strainedDone(base.name) });
  const age = spanWords(hoursBetween(base.madeAt, base.strainedAt ?? new Date(now).toISOString()));
  const sweetness = base.sugarNow_g_per_L ?? base.sugarStart_g_per_L;
  return (
    <Row
      title={base.name}
      to={`/bases/${base.id}`}
      marks={<SampleMark when={base.isSample} />}
      facts={
        <>
          <span>{base.strainedAt === null ? phrase`${age} old` : phrase`strained after ${age}`}</span>{' '}
          {base.culture === null ? null : <span>{base.culture.name}</span>}{' '}
          {sweetness === null ? null : (
            <span>
              {base.sugarNow_g_per_L === null
                ? phrase`${sugar(sweetness)} sugar at the start`
                : phrase`${sugar(sweetness)} sugar now`}
            </span>
          )}
        </>
      }
      end={phrase`${volume(base.left_mL)} left of ${volume(base.volume_mL)}`}
      actions={
        base.strainedAt === null ? (
          <Button disabled={strain.isPending} onClick={() => strain.mutate({ base: base.id })}>
            {words.strained}
          </Button>
        ) : null
      }
    />
  );
}

function CultureRow({ culture }: { readonly culture: Culture }) {
  const { mass } = useMeasures();
  return (
    <Row
      title={culture.name}
      to={`/cultures/${culture.id}`}
      marks={<SampleMark when={culture.isSample} />}
      facts={
        <>
          <span>{culture.kind}</span> {culture.isReviving ? <span>{words.reviving}</span> : null}{' '}
          {culture.parent === null ? null : <span>{words.splitFrom(culture.parent.name)}</span>}{' '}
          {culture.rests === null ? null : <span>{phrase`rests: ${culture.rests}`}</span>}{' '}
          {culture.refreshedAt === null ? null : <span>{phrase`refreshed ${dateWords(culture.refreshedAt)}`}</span>}
        </>
      }
      end={culture.weight_g === null ? undefined : mass(culture.weight_g)}
    />
  );
}

/** The bases and the cultures they come from. */
export function BasesPage() {
  const bases = useAnswer('bases:list', {});
  const cultures = useAnswer('cultures:list', {});
  const [shown, setShown] = useState<'base' | 'culture' | null>(null);
  const close = () => setShown(null);
  const startBase = (
    <Button weight="main" onClick={() => setShown('base')}>
      {words.startBase}
    </Button>
  );
  return (
    <>
      <PageHead
        title={words.title}
        lead={words.lead}
        actions={
          <>
            {bases.data?.bases.length === 0 ? null : startBase}
            <ButtonLink to="/bottles">{words.bottles}</ButtonLink>
          </>
        }
      />
      <section className="section">
        <h2>
          <Explained words={words.bases} />
        </h2>
        <Answer of={bases}>
          {({ bases: all }) =>
            all.length === 0 ? (
              <EmptyState title={words.emptyBases.title} actions={startBase}>
                <p>
                  <Explained words={words.emptyBases.line} />
                </p>
              </EmptyState>
            ) : (
              <RowList label={words.bases}>
                {all.map((base) => (
                  <BaseRow key={base.id} base={base} />
                ))}
              </RowList>
            )
          }
        </Answer>
      </section>
      <section className="section">
        <div className="section-head">
          <h2>
            <Explained words={words.cultures} />
          </h2>
          <Button onClick={() => setShown('culture')}>{words.addCulture}</Button>
        </div>
        <Answer of={cultures}>
          {({ cultures: all }) =>
            all.length === 0 ? (
              <p className="soft">
                <Explained words={words.emptyCultures} />
              </p>
            ) : (
              <RowList label={words.cultures}>
                {all.map((culture) => (
                  <CultureRow key={culture.id} culture={culture} />
                ))}
              </RowList>
            )
          }
        </Answer>
      </section>
      {shown === 'base' ? (
        <Sheet title={words.startBase} onClose={close}>
          <BaseForm base={null} cultures={cultures.data?.cultures ?? []} onDone={close} />
        </Sheet>
      ) : null}
      {shown === 'culture' ? (
        <Sheet title={words.addCulture} onClose={close}>
          <CultureForm culture={null} onDone={close} />
        </Sheet>
      ) : null}
    </>
  );
}
