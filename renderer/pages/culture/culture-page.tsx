import { useState } from 'react';
import { Link } from 'wouter';
import { restsCold } from '#core/trial/need.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { dateWords, plannedSpanWords } from '#renderer/format/moments.ts';
import { type Measures, useMeasures } from '#renderer/format/use-measures.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { Button, ButtonLink } from '#renderer/parts/button/button.tsx';
import { CultureForm } from '#renderer/parts/culture-form/culture-form.tsx';
import { EmptyState } from '#renderer/parts/empty-state/empty-state.tsx';
import { type Fact, Facts } from '#renderer/parts/facts/facts.tsx';
import { HistoryLink } from '#renderer/parts/history-link/history-link.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { Row, RowList } from '#renderer/parts/row-list/row-list.tsx';
import { Sheet } from '#renderer/parts/sheet/sheet.tsx';
import { SampleMark } from '#renderer/parts/tape/tape.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { CultureActs } from './culture-acts.tsx';
import { SplitForm } from './split-form.tsx';
import { WeightChart } from './weight-chart.tsx';
import { actWords, words } from './words.ts';

type Culture = ValueOf<'cultures:open'>;

/** What Today goes by. */
function refreshWords({ refreshDays, rests }: Culture): string {
  if (refreshDays !== null) return plannedSpanWords(refreshDays * 24);
  return restsCold(rests) ? words.usual : words.noReminder;
}

function Links({ to, all }: { readonly to: string; readonly all: readonly { id: string; name: string }[] }) {
  return (
    <>
      {all.map(({ id, name }, place) => (
        <span key={id}>
          {place === 0 ? '' : ', '}
          <Link href={`${to}/${id}`}>{name}</Link>
        </span>
      ))}
    </>
  );
}

function factsOf(culture: Culture, { mass }: Measures): Fact[] {
  const { weight_g, rests, refreshedAt, parent, children, bases } = culture;
  return [
    { name: words.weight, value: weight_g === null ? words.unknown : mass(weight_g) },
    { name: words.rests, value: rests ?? words.unknown },
    { name: words.refreshed, value: refreshedAt === null ? words.unknown : dateWords(refreshedAt) },
    { name: words.every, value: refreshWords(culture) },
    ...(parent === null ? [] : [{ name: words.from, value: <Links to="/cultures" all={[parent]} /> }]),
    ...(children.length === 0 ? [] : [{ name: words.parts, value: <Links to="/cultures" all={children} /> }]),
    ...(bases.length === 0 ? [] : [{ name: words.made, value: <Links to="/bases" all={bases} /> }]),
  ];
}

/** Feeds since it was last awake. */
function feedsOf(log: Culture['log']): number {
  const last = log.findLastIndex(({ what }) => what === 'revived');
  return log.slice(last + 1).filter(({ what }) => what === 'revival-feed').length;
}

function CultureLog({ log, measures }: { readonly log: Culture['log']; readonly measures: Measures }) {
  return (
    <RowList label={words.log}>
      {log.toReversed().map(({ id, at, what, weight_g, note }) => (
        <Row
          key={id}
          title={actWords[what]}
          facts={
            <>
              <span>{dateWords(at)}</span> {note === null ? null : <span>{note}</span>}
            </>
          }
          end={weight_g === null ? undefined : measures.mass(weight_g)}
        />
      ))}
    </RowList>
  );
}

function WholeCulture({ culture }: { readonly culture: Culture }) {
  const measures = useMeasures();
  const [shown, setShown] = useState<'change' | 'split' | null>(null);
  const close = () => setShown(null);
  return (
    <>
      <PageHead
        above={
          <>
            <Link href="/bases">{words.bases}</Link>
            <SampleMark when={culture.isSample} />
          </>
        }
        title={culture.name}
        isTitleTheirs
        lead={culture.isReviving ? `${culture.kind}, ${words.reviving(feedsOf(culture.log))}` : culture.kind}
        actions={
          <>
            <Button onClick={() => setShown('split')}>{words.splitOff}</Button>
            <Button onClick={() => setShown('change')}>{words.change}</Button>
          </>
        }
      />
      <section className="section">
        <Facts facts={factsOf(culture, measures)} />
        {culture.note === null ? null : <p className="soft">{culture.note}</p>}
      </section>
      <section className="section">
        <h2>
          <Explained words={words.act} />
        </h2>
        <CultureActs culture={culture} />
      </section>
      <section className="section">
        <h2>
          <Explained words={words.seasons} />
        </h2>
        {culture.log.length === 0 ? (
          <p className="soft">
            <Explained words={words.noLog} />
          </p>
        ) : (
          <>
            <WeightChart log={culture.log} measures={measures} />
            <h3>
              <Explained words={words.log} />
            </h3>
            <CultureLog log={culture.log} measures={measures} />
          </>
        )}
      </section>
      <HistoryLink table="cultures" id={culture.id} />
      {shown === 'change' ? (
        <Sheet title={words.changeOf(culture.name)} onClose={close}>
          <CultureForm culture={culture} onDone={close} />
        </Sheet>
      ) : null}
      {shown === 'split' ? (
        <Sheet title={words.splitOf(culture.name)} onClose={close}>
          <SplitForm culture={culture} onDone={close} />
        </Sheet>
      ) : null}
    </>
  );
}

/** One culture: its weight over the seasons, where it rests, what was done to it, where it comes from. */
export function CulturePage({ id }: { readonly id: string }) {
  const culture = useAnswer('cultures:open', { culture: id });
  if (culture.error?.code === 'not-found') {
    return (
      <>
        <PageHead title={words.gone} above={<Link href="/bases">{words.bases}</Link>} />
        <EmptyState title={words.goneLine} actions={<ButtonLink to="/bases">{words.toAll}</ButtonLink>}>
          {null}
        </EmptyState>
      </>
    );
  }
  return <Answer of={culture}>{(value) => <WholeCulture culture={value} />}</Answer>;
}
