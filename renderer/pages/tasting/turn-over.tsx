import { type FormEvent, useState } from 'react';
import { useRequest } from '#renderer/app/use-request.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { Field } from '#renderer/parts/field/field.tsx';
import { takenOutCodes } from '#renderer/parts/taken-out/standing-orders.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { type AloneDraft, placesInOrder } from './alone-draft.ts';
import { aloneWords } from './alone-words.ts';
import { readCell } from './cell-text.ts';

type Tasting = ValueOf<'tastings:open'>;

/** Why a code can't stand at this cup; undefined when it can. */
export function codeFault(
  code: string,
  place: number,
  codes: Readonly<Record<string, string>>,
  known: readonly string[],
) {
  const written = code.trim();
  if (written.length < 3) return undefined;
  if (!known.includes(written)) return aloneWords.noSuchCode(written);
  const twin = Object.entries(codes).some(([other, held]) => Number(other) !== place && held.trim() === written);
  return twin ? aloneWords.codeTwice(written) : undefined;
}

interface TurnOverProps {
  readonly tasting: Tasting;
  readonly order: Tasting['orders'][number];
  readonly draft: AloneDraft;
  readonly onChange: (codes: Readonly<Record<string, string>>) => void;
  readonly onKept: () => void;
}

/** The cups are turned over: each one's code, and the scores go where they belong. */
export function TurnOver({ tasting, order, draft, onChange, onKept }: TurnOverProps) {
  const [isTried, setIsTried] = useState(false);
  const enter = useRequest('scores:enter', {
    done: ({ entered }) => aloneWords.scoresKept(entered),
    showsFailure: true,
  });
  const known = tasting.sampleList.map(({ code }) => code);
  const places = placesInOrder(order).toSorted((a, b) => a - b);
  const codeAt = (place: number) => draft.codes[String(place)] ?? '';

  function faultAt(place: number): string | undefined {
    const fault = codeFault(codeAt(place), place, draft.codes, known);
    if (fault !== undefined || !isTried) return fault;
    return known.includes(codeAt(place).trim()) ? undefined : aloneWords.noSuchCode(codeAt(place).trim() || '…');
  }

  const gone = takenOutCodes(tasting);
  const scores = places
    .filter((place) => !gone.has(codeAt(place).trim()))
    .flatMap((place) =>
      tasting.attributes.flatMap((attribute) => {
        const reading = readCell(draft.texts[`${place}/${attribute.id}`] ?? '', attribute);
        if (reading.kind !== 'score') return [];
        return [{ taster: order.name, sample: codeAt(place).trim(), attribute: attribute.name, score: reading.score }];
      }),
    );

  function send(event: FormEvent) {
    event.preventDefault();
    setIsTried(true);
    const isWhole = places.every(
      (place) =>
        known.includes(codeAt(place).trim()) && codeFault(codeAt(place), place, draft.codes, known) === undefined,
    );
    if (!isWhole || scores.length === 0) return;
    enter.mutate({ tasting: tasting.id, scores }, { onSuccess: onKept });
  }

  return (
    <form className="form" onSubmit={send} noValidate>
      <div className="field-grid is-tight">
        {places.map((place) => (
          <Field key={place} label={aloneWords.codeUnder(place)} fault={faultAt(place)}>
            {(wiring) => (
              <input
                {...wiring}
                inputMode="numeric"
                autoComplete="off"
                maxLength={3}
                value={codeAt(place)}
                onChange={({ target }) => onChange({ ...draft.codes, [String(place)]: target.value })}
              />
            )}
          </Field>
        ))}
      </div>
      {scores.length === 0 ? <p className="field-fault">{aloneWords.nothingScored}</p> : null}
      {enter.error === null ? null : (
        <p className="field-fault" role="alert">
          {enter.error.message}
        </p>
      )}
      <div className="button-row">
        <Button type="submit" weight="main" disabled={enter.isPending || scores.length === 0}>
          {aloneWords.keepScores}
        </Button>
      </div>
    </form>
  );
}
