import { Link, useLocation } from 'wouter';
import { phrase } from '#core/words/phrase.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { useRequest } from '#renderer/app/use-request.ts';
import { counted } from '#renderer/format/counted.ts';
import { dayAndTime } from '#renderer/format/moments.ts';
import { type Measures, useMeasures } from '#renderer/format/use-measures.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { Button, ButtonLink } from '#renderer/parts/button/button.tsx';
import { BaseMouldOfTrial } from '#renderer/parts/caution/base-mould.tsx';
import { type Fact, Facts } from '#renderer/parts/facts/facts.tsx';
import { HistoryLink } from '#renderer/parts/history-link/history-link.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { Row, RowList } from '#renderer/parts/row-list/row-list.tsx';
import { words as shelfWords } from '#renderer/parts/shelf/words.ts';
import { WrappedShelf } from '#renderer/parts/shelf/wrapped-shelf.tsx';
import { TakenOutList } from '#renderer/parts/taken-out/taken-out-list.tsx';
import { SampleMark } from '#renderer/parts/tape/tape.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { CloseAndReveal } from './close-and-reveal.tsx';
import { Revealed } from './revealed.tsx';
import { type SheetProgress, sheetProgress } from './sheet-progress.ts';
import { Warnings } from './warnings.tsx';
import { words } from './words.ts';

type Tasting = ValueOf<'tastings:open'>;

function progressWords({ lacks, missed }: SheetProgress): string {
  const parts = [
    lacks.length === 0 ? words.complete : words.missing(lacks),
    ...(missed.length === 0 ? [] : [words.missedSamples(missed)]),
  ];
  return parts.join('; ');
}

function tastingFacts(tasting: Tasting, measures: Measures): Fact[] {
  const amount = tasting.sampleList[0]?.served_mL ?? null;
  return [
    { name: words.held, value: dayAndTime(tasting.heldAt) },
    {
      name: words.asked,
      value: tasting.isRanked ? words.askedRanked : words.askedScored(tasting.attributes.map(({ name }) => name)),
    },
    { name: words.each, value: amount === null ? words.notAsked : measures.volume(amount) },
    {
      name: words.served,
      value: tasting.served_C === null ? words.notAsked : measures.temperature(tasting.served_C),
    },
    { name: words.repeats, value: words.times(tasting.replicates) },
  ];
}

function Sheets({ tasting, progress }: { readonly tasting: Tasting; readonly progress: readonly SheetProgress[] }) {
  const waitsFor = progress.filter(({ lacks }) => lacks.length > 0).map(({ name }) => name);
  return (
    <section className="section">
      <h2>
        <Explained words={words.sheets} />
      </h2>
      <p className="soft">
        {tasting.closedAt === null ? `${words.sheetsLine} ` : null}
        {waitsFor.length === 0 ? words.allIn : words.waiting(waitsFor)}
      </p>
      <RowList label={words.sheets}>
        {progress.map((one) => (
          <Row
            key={one.taster}
            title={one.name}
            to={`/tastings/${tasting.id}/sheet/${one.taster}`}
            facts={progressWords(one)}
            end={words.ofExpected(one.scores, one.expected)}
          />
        ))}
      </RowList>
      {tasting.closedAt === null ? (
        <div className="button-row">
          <ButtonLink to={`/tastings/${tasting.id}/import`}>{words.toImport}</ButtonLink>
        </div>
      ) : null}
    </section>
  );
}

function OpenTasting({ tasting }: { readonly tasting: Tasting }) {
  const isAlone = tasting.orders.length === 1;
  return (
    <section className="section">
      <h2>
        <Explained words={words.before} />
      </h2>
      <Warnings orders={tasting.orders} />
      {isAlone ? <p>{words.aloneLine}</p> : <p>{words.pourLine}</p>}
      <div className="button-row">
        {isAlone ? (
          <ButtonLink to={`/tastings/${tasting.id}/alone`} weight="main">
            {words.toAlone}
          </ButtonLink>
        ) : null}
        <ButtonLink to={`/tastings/${tasting.id}/pour`}>{words.toPour}</ButtonLink>
        <ButtonLink to={`/tastings/${tasting.id}/stickers`}>{words.toStickers}</ButtonLink>
        <ButtonLink to={`/tastings/${tasting.id}/pen-sheets`}>{words.toPenSheets}</ButtonLink>
      </div>
    </section>
  );
}

function WholeTasting({ tasting }: { readonly tasting: Tasting }) {
  const measures = useMeasures();
  const [, go] = useLocation();
  const scores = useAnswer('scores:list', { tasting: tasting.id });
  const remarks = useAnswer('remarks:list', { tasting: tasting.id });
  const remove = useRequest('tastings:remove', { done: () => words.removed });
  const isOpen = tasting.closedAt === null;
  return (
    <>
      <PageHead
        above={
          <>
            {tasting.trial === null ? (
              <Link href="/trials">{phrase`Trials`}</Link>
            ) : (
              <Link href={`/trials/${tasting.trial}/taste`}>{words.backToTrial}</Link>
            )}
            <SampleMark when={tasting.isSample} />
          </>
        }
        title={tasting.name}
        isTitleTheirs
        lead={`${counted(tasting.samples, 'sample')}, ${counted(tasting.tasters, 'taster')}. ${isOpen ? words.open : words.closed}`}
      />
      <div className="section">
        <TakenOutList samples={tasting.sampleList} />
        {isOpen ? <BaseMouldOfTrial trial={tasting.trial} /> : null}
        <Facts facts={tastingFacts(tasting, measures)} />
        {tasting.note === null ? null : <p>{tasting.note}</p>}
        {isOpen ? <WrappedShelf samples={tasting.sampleList} label={shelfWords.wrappedFor(tasting.name)} /> : null}
      </div>
      <Answer of={scores}>
        {(kept) => (
          <Answer of={remarks}>
            {(said) => {
              const progress = sheetProgress(tasting, kept.scores, said.remarks);
              return (
                <>
                  {isOpen ? (
                    <OpenTasting tasting={tasting} />
                  ) : (
                    <Revealed tasting={tasting} scores={kept.scores} remarks={said.remarks} />
                  )}
                  <Sheets tasting={tasting} progress={progress} />
                  {isOpen ? <CloseAndReveal tasting={tasting} progress={progress} /> : null}
                </>
              );
            }}
          </Answer>
        )}
      </Answer>
      <div className="button-row no-print">
        <Button
          weight="quiet"
          disabled={remove.isPending}
          onClick={() =>
            remove.mutate(
              { tasting: tasting.id },
              { onSuccess: () => go(tasting.trial === null ? '/trials' : `/trials/${tasting.trial}/taste`) },
            )
          }
        >
          {words.remove}
        </Button>
      </div>
      <HistoryLink table="tastings" id={tasting.id} />
    </>
  );
}

/** One tasting: who has tasted, what is still missing, and its end. Blind while it is open. */
export function TastingPage({ id }: { readonly id: string }) {
  const tasting = useAnswer('tastings:open', { tasting: id });
  return <Answer of={tasting}>{(value) => <WholeTasting tasting={value} />}</Answer>;
}
