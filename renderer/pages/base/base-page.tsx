import { useState } from 'react';
import { Link } from 'wouter';
import { type BaseAlcohol, baseAlcohol } from '#core/ferment/base-alcohol.ts';
import { readingCautions } from '#core/ferment/reading-cautions.ts';
import { hoursBetween } from '#core/trial/moment.ts';
import { fixed } from '#core/words/figures.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { useRequest } from '#renderer/app/use-request.ts';
import { dateWords, plannedSpanWords, spanWords } from '#renderer/format/moments.ts';
import { type Measures, useMeasures } from '#renderer/format/use-measures.ts';
import { useNow } from '#renderer/format/use-now.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { BaseForm } from '#renderer/parts/base-form/base-form.tsx';
import { Button, ButtonLink } from '#renderer/parts/button/button.tsx';
import { Caution } from '#renderer/parts/caution/caution.tsx';
import { EmptyState } from '#renderer/parts/empty-state/empty-state.tsx';
import { type Fact, Facts } from '#renderer/parts/facts/facts.tsx';
import { HistoryLink } from '#renderer/parts/history-link/history-link.tsx';
import { ReadingEntry } from '#renderer/parts/jar-work/reading-entry.tsx';
import { SightingEntry } from '#renderer/parts/jar-work/sightings-to-tap.tsx';
import { watchedBase } from '#renderer/parts/jar-work/watched.ts';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { Sheet } from '#renderer/parts/sheet/sheet.tsx';
import { SampleMark } from '#renderer/parts/tape/tape.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { BaseReadings, BaseSightings } from './base-entries.tsx';
import { BasePhotos } from './base-photos.tsx';
import { words } from './words.ts';
import './base.css';

type Base = ValueOf<'bases:open'>;

function alcoholWords(alcohol: BaseAlcohol | null): string {
  if (alcohol === null) return words.unknown;
  return alcohol.from === 'given' ? words.alcoholGiven(alcohol.pctVol) : words.alcoholAtMost(fixed(alcohol.pctVol, 1));
}

function factsOf(base: Base, measures: Measures): Fact[] {
  const orUnknown = (value: number | null, shown: (value: number) => string) =>
    value === null ? words.unknown : shown(value);
  return [
    { name: words.there, value: words.left(measures.volume(base.left_mL), measures.volume(base.volume_mL)) },
    { name: words.made, value: dateWords(base.madeAt) },
    ...(base.culture === null
      ? []
      : [
          {
            name: words.culture,
            value: <Link href={`/cultures/${base.culture.id}`}>{base.culture.name}</Link>,
          },
        ]),
    { name: words.sugarStart, value: orUnknown(base.sugarStart_g_per_L, measures.sugar) },
    { name: words.sugarNow, value: orUnknown(base.sugarNow_g_per_L, measures.sugar) },
    { name: words.temperature, value: orUnknown(base.temperature_C, measures.temperature) },
    {
      name: words.planned,
      value: base.plannedHours === null ? words.plannedUsual : plannedSpanWords(base.plannedHours),
    },
    { name: words.alcohol, value: alcoholWords(baseAlcohol(base)) },
  ];
}

/** The cautions of what was measured and seen, in place. */
function BaseCautions({ base }: { readonly base: Base }) {
  const isKombucha = /kombucha|scoby/i.test(`${base.name} ${base.culture?.name ?? ''} ${base.culture?.kind ?? ''}`);
  const readings = base.readings.flatMap(({ ph, takenAt }) =>
    ph === null ? [] : [{ hours: hoursBetween(base.madeAt, takenAt), pH: ph }],
  );
  return (
    <>
      {base.sightings.some(({ what, correctedAt }) => what === 'mould' && correctedAt === null) ? (
        <Caution basis={words.mouldBasis}>{words.mould}</Caution>
      ) : null}
      {readingCautions(readings, isKombucha ? 'kombucha' : 'other').map(({ code, message, basis }) => (
        <Caution key={code} basis={basis}>
          {message}
        </Caution>
      ))}
    </>
  );
}

function WholeBase({ base }: { readonly base: Base }) {
  const measures = useMeasures();
  const now = useNow();
  const cultures = useAnswer('cultures:list', {});
  const strain = useRequest('bases:strain', { done: () => words.strainedDone(base.name) });
  const [isChanging, setIsChanging] = useState(false);
  const age = spanWords(hoursBetween(base.madeAt, base.strainedAt ?? new Date(now).toISOString()));
  const watched = watchedBase(base);
  return (
    <>
      <PageHead
        above={
          <>
            <Link href="/bases">{words.bases}</Link>
            <SampleMark when={base.isSample} />
          </>
        }
        title={base.name}
        isTitleTheirs
        lead={base.strainedAt === null ? words.old(age) : words.strainedAfter(age)}
        actions={
          <>
            {base.strainedAt === null ? (
              <Button disabled={strain.isPending} onClick={() => strain.mutate({ base: base.id })}>
                {words.strained}
              </Button>
            ) : null}
            {base.left_mL > 0 ? <ButtonLink to={`/bases/${base.id}/plan`}>{words.allot}</ButtonLink> : null}
            <Button disabled={cultures.data === undefined} onClick={() => setIsChanging(true)}>
              {words.change}
            </Button>
          </>
        }
      />
      <section className="section">
        <BaseCautions base={base} />
        <Facts facts={factsOf(base, measures)} />
        {base.wentIn === null ? null : (
          <div>
            <h2>
              <Explained words={words.wentIn} />
            </h2>
            <p className="went-in">{base.wentIn}</p>
          </div>
        )}
        {base.note === null ? null : <p className="soft">{base.note}</p>}
      </section>
      <section className="section">
        <h2>
          <Explained words={words.measure} />
        </h2>
        <ReadingEntry watched={watched} />
        <SightingEntry watched={watched} />
      </section>
      <section className="section">
        <h2>
          <Explained words={words.readings} />
        </h2>
        <BaseReadings base={base} measures={measures} />
      </section>
      <section className="section">
        <h2>
          <Explained words={words.sightings} />
        </h2>
        <BaseSightings base={base} />
      </section>
      <BasePhotos base={base} />
      <HistoryLink table="bases" id={base.id} />
      {isChanging ? (
        <Sheet title={words.changeOf(base.name)} onClose={() => setIsChanging(false)}>
          <BaseForm base={base} cultures={cultures.data?.cultures ?? []} onDone={() => setIsChanging(false)} />
        </Sheet>
      ) : null}
    </>
  );
}

/** One base: how old and how sweet it is, what was measured and seen, with the cautions that belong to it. */
export function BasePage({ id }: { readonly id: string }) {
  const base = useAnswer('bases:open', { base: id });
  if (base.error?.code === 'not-found') {
    return (
      <>
        <PageHead title={words.gone} above={<Link href="/bases">{words.bases}</Link>} />
        <EmptyState title={words.goneLine} actions={<ButtonLink to="/bases">{words.toAll}</ButtonLink>}>
          {null}
        </EmptyState>
      </>
    );
  }
  return <Answer of={base}>{(value) => <WholeBase base={value} />}</Answer>;
}
