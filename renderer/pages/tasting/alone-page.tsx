import { useEffect, useRef, useState } from 'react';
import { Link } from 'wouter';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { Button, ButtonLink } from '#renderer/parts/button/button.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { TakenOutList } from '#renderer/parts/taken-out/taken-out-list.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { isHedonic } from '#shared/hedonic-words.ts';
import { type AloneDraft, aloneDraftName, aloneDraftOf, placesInOrder, useAloneDraft } from './alone-draft.ts';
import { aloneWords } from './alone-words.ts';
import { readCell } from './cell-text.ts';
import { CloseAndReveal } from './close-and-reveal.tsx';
import { HedonicLegend } from './hedonic-legend.tsx';
import { hasDoublePlace, placeFaults } from './place-faults.ts';
import { PlacesSoFar } from './places-so-far.tsx';
import { PouringCodes } from './pouring-list.tsx';
import { rankedWords } from './ranked-words.ts';
import { ScoreGrid } from './score-grid.tsx';
import { sheetProgress } from './sheet-progress.ts';
import { StepLegend } from './step-legend.tsx';
import { TurnOver } from './turn-over.tsx';
import { Warnings } from './warnings.tsx';
import { words } from './words.ts';
import './alone.css';
import './pour.css';
import './sheet.css';

type Tasting = ValueOf<'tastings:open'>;

function PourStep({ tasting }: { readonly tasting: Tasting }) {
  const [isShown, setIsShown] = useState(false);
  return (
    <>
      <Warnings orders={tasting.orders} />
      {aloneWords.pourLines.map((line) => (
        <p key={line}>{line}</p>
      ))}
      <div className="button-row">
        <Button onClick={() => setIsShown((shown) => !shown)}>
          {isShown ? aloneWords.hideCodes : aloneWords.showCodes}
        </Button>
      </div>
      {isShown ? <PouringCodes id={tasting.id} cups={1} /> : null}
    </>
  );
}

interface AloneProps {
  readonly tasting: Tasting;
  readonly order: Tasting['orders'][number];
  readonly first: AloneDraft;
  readonly scores: ValueOf<'scores:list'>['scores'];
}

function AlonePath({ tasting, order, first, scores }: AloneProps) {
  const { draft, change, failure, forget } = useAloneDraft(tasting.id, first);
  const places = placesInOrder(order);
  const step = scores.length > 0 ? 4 : draft.step;
  // Whoever has looked under a cup is no longer blind.
  const hasLooked = Object.values(draft.codes).some((code) => code.trim() !== '');
  const heading = useRef<HTMLHeadingElement>(null);
  const isFirst = useRef(true);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the heading is read out whenever the step changes
  useEffect(() => {
    if (isFirst.current) isFirst.current = false;
    else heading.current?.focus();
  }, [step]);
  const textKey = (position: number, attribute: { id: string }) => `${places[position] ?? 0}/${attribute.id}`;
  const place = tasting.isRanked ? tasting.attributes[0] : undefined;
  const cups =
    place === undefined
      ? []
      : places.map((at) => ({ name: aloneWords.cup(at), text: draft.texts[`${at}/${place.id}`] ?? '' }));
  const placeFaultAt = place === undefined ? [] : placeFaults(cups, place, false);
  const isDouble = place !== undefined && hasDoublePlace(cups, place);
  const steps = tasting.attributes.filter(({ kind }) => kind === 'just-about-right').map(({ name }) => name);
  const titles = [
    aloneWords.pourTitle,
    aloneWords.shuffleTitle,
    aloneWords.tasteTitle,
    aloneWords.turnTitle,
    aloneWords.revealTitle,
  ];

  return (
    <>
      <ol className="alone-steps" aria-label={aloneWords.steps_label}>
        {aloneWords.steps.map((name, position) => (
          <li key={name} aria-current={position === step ? 'step' : undefined}>
            {position + 1}. {name}
          </li>
        ))}
      </ol>
      <TakenOutList samples={tasting.sampleList} />
      <section className="section">
        <h2 ref={heading} tabIndex={-1} className="alone-title">
          {titles[step]}
        </h2>
        {step === 0 ? <PourStep tasting={tasting} /> : null}
        {step === 1 ? aloneWords.shuffleLines.map((line) => <p key={line}>{line}</p>) : null}
        {step === 2 ? (
          <>
            <p>{aloneWords.tasteLine(places)}</p>
            {place === undefined ? null : <p>{aloneWords.rankLine}</p>}
            <p className="soft small">{place === undefined ? words.keys : rankedWords.keys(places.length)}</p>
            <ScoreGrid
              label={aloneWords.sheet}
              attributes={tasting.attributes}
              rows={places.map((place) => ({
                key: String(place),
                name: aloneWords.cup(place),
                head: (
                  <>
                    <span className="score-code">{aloneWords.cup(place)}</span>
                    <span className="small soft">{aloneWords.fromLeft}</span>
                  </>
                ),
              }))}
              cell={(position, attribute) => {
                const text = draft.texts[textKey(position, attribute)] ?? '';
                const reading = readCell(text, attribute);
                return {
                  text,
                  state: text === '' ? 'empty' : 'typed',
                  fault: placeFaultAt[position] ?? (reading.kind === 'fault' ? reading.message : undefined),
                };
              }}
              onType={(position, attribute, text) =>
                change({ texts: { ...draft.texts, [textKey(position, attribute)]: text } })
              }
              onEnd={() => document.getElementById('alone-onward')?.focus()}
            />
            <p className="soft small">{failure === null ? aloneWords.kept : aloneWords.notKept(failure)}</p>
            {place === undefined ? null : <PlacesSoFar cups={cups} scale={place} />}
            {isDouble ? (
              <p className="field-fault" role="alert">
                {rankedWords.doubleAlone}
              </p>
            ) : null}
            {steps.length > 0 ? <StepLegend names={steps} /> : null}
            {tasting.attributes.some(isHedonic) ? <HedonicLegend /> : null}
          </>
        ) : null}
        {step === 3 ? (
          <>
            <p>{aloneWords.turnLine}</p>
            <TurnOver
              tasting={tasting}
              order={order}
              draft={draft}
              onChange={(codes) => change({ codes })}
              onKept={() => void forget()}
            />
          </>
        ) : null}
        {step === 4 ? <p>{aloneWords.revealLine}</p> : null}
        {step < 4 ? (
          <div className="button-row">
            {step < 3 ? (
              <Button
                id="alone-onward"
                weight="main"
                disabled={step === 2 && isDouble}
                onClick={() => change({ step: step + 1 })}
              >
                {aloneWords.onward}
              </Button>
            ) : null}
            {step > 0 && !(step === 3 && hasLooked) ? (
              <Button weight="quiet" onClick={() => change({ step: step - 1 })}>
                {aloneWords.back}
              </Button>
            ) : null}
          </div>
        ) : null}
      </section>
      {step === 4 ? <CloseAndReveal tasting={tasting} progress={sheetProgress(tasting, scores, [])} /> : null}
      <section className="section">
        <h2>
          <Explained words={aloneWords.canTellTitle} />
        </h2>
        {aloneWords.canTell.map((line) => (
          <p key={line}>{line}</p>
        ))}
        <p>{aloneWords.twice}</p>
      </section>
    </>
  );
}

/** The guided way for one person who pours and tastes, and stays blind. */
export function AlonePage({ id }: { readonly id: string }) {
  const tasting = useAnswer('tastings:open', { tasting: id });
  const scores = useAnswer('scores:list', { tasting: id });
  const kept = useAnswer('drafts:open', { name: aloneDraftName(id) });
  return (
    <Answer of={tasting}>
      {(value) => {
        const order = value.orders[0];
        const isForOne = order !== undefined && value.orders.length === 1 && value.replicates === 1;
        return (
          <>
            <PageHead
              above={<Link href={`/tastings/${id}`}>{value.name}</Link>}
              title={aloneWords.title}
              lead={aloneWords.lead}
            />
            {!isForOne || value.closedAt !== null ? (
              <section className="section">
                <p>
                  <Explained words={value.closedAt === null ? aloneWords.onlyOnce : words.closed} />
                </p>
                <div className="button-row">
                  <ButtonLink to={`/tastings/${id}`}>{words.backToTasting}</ButtonLink>
                </div>
              </section>
            ) : (
              <Answer of={scores}>
                {(stored) => (
                  <Answer of={kept}>
                    {({ draft }) => (
                      <AlonePath
                        tasting={value}
                        order={order}
                        first={aloneDraftOf(draft?.body)}
                        scores={stored.scores}
                      />
                    )}
                  </Answer>
                )}
              </Answer>
            )}
          </>
        );
      }}
    </Answer>
  );
}
