import { useMemo, useRef, useState } from 'react';
import { Link } from 'wouter';
import { phrase } from '#core/words/phrase.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { useRequest } from '#renderer/app/use-request.ts';
import { joined } from '#renderer/format/words.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { Late } from '#renderer/parts/answer/late.tsx';
import { Button, ButtonLink } from '#renderer/parts/button/button.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { takenOutCodes } from '#renderer/parts/taken-out/standing-orders.ts';
import { words as takenOutWords } from '#renderer/parts/taken-out/words.ts';
import { Tape } from '#renderer/parts/tape/tape.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { isHedonic } from '#shared/hedonic-words.ts';
import { saysMissed } from '#shared/missed-sample.ts';
import { HedonicLegend } from './hedonic-legend.tsx';
import { freePlaces } from './place-faults.ts';
import { PlacesSoFar } from './places-so-far.tsx';
import { rankedWords } from './ranked-words.ts';
import { RemarkField } from './remark-field.tsx';
import type { Attribute } from './score-cell.tsx';
import { ScoreGrid } from './score-grid.tsx';
import { sheetProgress, sheetRows } from './sheet-progress.ts';
import { StepLegend } from './step-legend.tsx';
import { useSheet } from './use-sheet.ts';
import { words } from './words.ts';
import './sheet.css';

type Tasting = ValueOf<'tastings:open'>;

/** What stands at a cup whose jar was discarded. */
function TakenAway({ why }: { readonly why: string }) {
  return (
    <>
      <Tape small>{takenOutWords.tape}</Tape> <span>{takenOutWords.row(why)}</span>
    </>
  );
}

interface SheetProps {
  readonly tasting: Tasting;
  readonly order: Tasting['orders'][number];
  readonly scores: ValueOf<'scores:list'>['scores'];
  readonly remarks: ValueOf<'remarks:list'>['remarks'];
}

/** Whether a taster's stored places hold one twice: then they meant it. */
function sharesPlaces(scores: SheetProps['scores'], name: string): boolean {
  const places = scores.filter(({ taster }) => taster === name).map(({ score }) => score);
  return new Set(places).size < places.length;
}

function EntrySheet({ tasting, order, scores, remarks }: SheetProps) {
  const rows = useMemo(() => sheetRows(order), [order]);
  const { attributes } = tasting;
  const gone = useMemo(() => takenOutCodes(tasting), [tasting]);
  // Of one taster alone, and only when they change: a key must not wait for the whole panel's scores.
  const kept = useMemo(
    () => scores.filter(({ taster, sample }) => taster === order.name && !gone.has(sample)),
    [scores, order.name, gone],
  );
  const isClosed = tasting.closedAt !== null;
  const steps = attributes.filter(({ kind }) => kind === 'just-about-right').map(({ name }) => name);
  const [areTiesMeant, setAreTiesMeant] = useState(() => tasting.isRanked && sharesPlaces(kept, order.name));
  const place = tasting.isRanked ? attributes[0] : undefined;
  const ranking =
    place === undefined ? null : { rows: rows.filter(({ code }) => !gone.has(code)), attribute: place, areTiesMeant };
  const sheet = useSheet(tasting.id, order.name, kept, ranking);
  const undo = useRequest('undo:last', { done: ({ summary }) => phrase`Undone: ${summary}` });
  const end = useRef<HTMLParagraphElement>(null);
  const progress = useMemo(
    () => sheetProgress({ ...tasting, orders: [order] }, kept, remarks)[0],
    [tasting, order, kept, remarks],
  );
  // Whoever comes back to half a ranking is told at once which cups still wait.
  const [hasEnded, setHasEnded] = useState(() => place !== undefined && (progress?.scores ?? 0) > 0);
  const hasFault = (position: number, attribute: Attribute) => {
    const row = rows[position];
    return row !== undefined && sheet.cell(row, attribute).fault !== undefined;
  };
  const isFull =
    progress !== undefined &&
    progress.lacks.length === 0 &&
    !(place !== undefined && rows.some((_, position) => hasFault(position, place)));
  const freeNote = place === undefined ? undefined : rankedWords.free(freePlaces(sheet.cups, place));
  const saidOf = (code: string) =>
    remarks.find(({ taster, sample }) => taster === order.name && sample === code)?.words ?? '';
  const hasScores = (code: string) => scores.some(({ taster, sample }) => taster === order.name && sample === code);
  const firstOfSitting = (position: number) => position > 0 && rows[position]?.sitting !== rows[position - 1]?.sitting;
  const jarOf = (code: string) => tasting.sampleList.find((sample) => sample.code === code)?.jar ?? null;

  return (
    <>
      <p className="sheet-state" data-waiting={sheet.waiting > 0 || undefined}>
        <strong>{words.kept(sheet.kept, progress?.expected ?? 0)}</strong>
        {sheet.waiting > 0 ? (
          <Late after_ms={400}>
            <span className="soft">{words.keeping}</span>
          </Late>
        ) : null}
      </p>
      {sheet.notKept === 0 ? null : (
        <div className="sheet-fault" role="alert">
          <p>{words.notKept(sheet.notKept)}</p>
          <Button onClick={sheet.retry}>{words.again}</Button>
        </div>
      )}
      <ScoreGrid
        label={words.sheetOf(order.name)}
        attributes={attributes}
        isReadOnly={isClosed}
        rows={rows.map((row, position) => {
          const jar = jarOf(row.code);
          const isMissed = saysMissed(saidOf(row.code)) && !hasScores(row.code);
          return {
            key: `${row.code}-${row.replicate}`,
            name: row.replicate > 1 ? phrase`${row.code}, serving ${row.replicate}` : row.code,
            isMissed,
            ...(gone.has(row.code) ? { instead: <TakenAway why={gone.get(row.code) ?? ''} /> } : {}),
            head: (
              <>
                <span className="score-code">{row.code}</span>
                <span className="small soft">
                  {jar === null ? words.place(row.place, rows.length) : `${jar.label}, ${jar.level}`}
                  {firstOfSitting(position) ? ` ${words.restBefore(row.sitting)}` : ''}
                </span>
              </>
            ),
            // One remark a sample: it stands at the sample's first serving.
            ...(row.replicate > 1 || gone.has(row.code)
              ? {}
              : {
                  foot: (
                    <RemarkField
                      tasting={tasting.id}
                      taster={order.name}
                      code={row.code}
                      stored={saidOf(row.code)}
                      hasScores={hasScores(row.code)}
                      isReadOnly={isClosed}
                    />
                  ),
                }),
          };
        })}
        cell={(position, attribute) => {
          const row = rows[position];
          if (row === undefined) return { text: '', state: 'empty' };
          const cell = sheet.cell(row, attribute);
          const isWanted = hasEnded && cell.text === '' && !saysMissed(saidOf(row.code)) && !isClosed;
          return isWanted ? { ...cell, note: freeNote } : cell;
        }}
        onType={(position, attribute, text) => {
          const row = rows[position];
          if (row !== undefined) sheet.type(row, attribute, text);
        }}
        onLeave={(position, attribute) => {
          const row = rows[position];
          if (row !== undefined) sheet.leave(row, attribute);
        }}
        onEnd={() => {
          setHasEnded(true);
          end.current?.focus();
        }}
        onUndo={() => void sheet.settled().then(() => undo.mutate({}))}
      />
      <p ref={end} className="sheet-end" tabIndex={-1} role="status">
        {isFull && sheet.waiting === 0 ? (place === undefined ? words.sheetFull : rankedWords.full) : null}
        {!isFull && hasEnded && sheet.waiting === 0 && progress !== undefined && progress.lacks.length > 0
          ? place === undefined
            ? `${words.sheetEnd} ${words.stillMissing(progress.lacks)}`
            : rankedWords.stillMissing(progress.lacks.map(({ code }) => code))
          : null}
        {progress !== undefined && progress.missed.length > 0 ? ` ${words.youMissed(joined(progress.missed))}` : null}
      </p>
      {place === undefined ? null : (
        <>
          {isClosed ? null : (
            <label className="check">
              <input
                type="checkbox"
                checked={areTiesMeant}
                onChange={({ target }) => setAreTiesMeant(target.checked)}
              />
              <span>
                {rankedWords.ties} <span className="soft small">{rankedWords.tiesHint}</span>
              </span>
            </label>
          )}
          <PlacesSoFar cups={sheet.cups} scale={place} />
        </>
      )}
      {steps.length > 0 ? <StepLegend names={steps} /> : null}
      {attributes.some(isHedonic) ? <HedonicLegend /> : null}
      <div className="button-row no-print">
        <ButtonLink to={`/tastings/${tasting.id}`}>{words.backToTasting}</ButtonLink>
      </div>
    </>
  );
}

/** The entry sheet of one taster, blind, in their own serving order. */
export function SheetPage({ id, taster }: { readonly id: string; readonly taster: string }) {
  const tasting = useAnswer('tastings:open', { tasting: id });
  const scores = useAnswer('scores:list', { tasting: id });
  const remarks = useAnswer('remarks:list', { tasting: id });
  return (
    <Answer of={tasting}>
      {(value) => {
        const order = value.orders.find((one) => one.taster === taster);
        if (order === undefined) return <p role="alert">{words.notHere}</p>;
        return (
          <>
            <PageHead
              above={<Link href={`/tastings/${id}`}>{value.name}</Link>}
              title={order.name}
              isTitleTheirs
              lead={value.closedAt === null ? (value.isRanked ? rankedWords.lead : words.sheetLead) : words.closedSheet}
            />
            {value.closedAt === null ? (
              <p className="soft small sheet-keys no-print">
                {value.isRanked ? rankedWords.keys(value.samples) : words.keys}
              </p>
            ) : null}
            {order.warnings.map((line) => (
              <p key={line} className="sheet-warning">
                {line}
              </p>
            ))}
            <Answer of={scores}>
              {(kept) => (
                <Answer of={remarks}>
                  {(said) => <EntrySheet tasting={value} order={order} scores={kept.scores} remarks={said.remarks} />}
                </Answer>
              )}
            </Answer>
          </>
        );
      }}
    </Answer>
  );
}
