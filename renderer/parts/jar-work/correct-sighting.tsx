import { type FormEvent, useState } from 'react';
import { useRequest } from '#renderer/app/use-request.ts';
import { dayAndTime } from '#renderer/format/moments.ts';
import { joined } from '#renderer/format/words.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { faultAt } from '#renderer/parts/field/fault-at.ts';
import { Field } from '#renderer/parts/field/field.tsx';
import { Sheet } from '#renderer/parts/sheet/sheet.tsx';
import { useSayWithUndo } from '#renderer/parts/toast/use-say-with-undo.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { sightingText } from './sighting-said.tsx';
import { words } from './words.ts';

type Sighting = ValueOf<'jars:open'>['sightings'][number];
type Corrected = ValueOf<'sightings:correct'>;

function doneWords({ broughtBack, tastings, without }: Corrected): string {
  return [
    words.corrected,
    ...(broughtBack === null ? [] : [words.isBack(broughtBack)]),
    ...(tastings.length === 0 ? [] : [words.backInto(joined(tastings))]),
    ...(without.length === 0 ? [] : [words.staysWithout(joined(without))]),
  ].join(' ');
}

function useCorrect() {
  const sayWithUndo = useSayWithUndo();
  const correct = useRequest('sightings:correct', { showsFailure: true });
  return {
    correct,
    send: (sighting: string, why: string, then: () => void) =>
      correct.mutate(
        { sighting, ...(why === '' ? {} : { why }) },
        {
          onSuccess: (value) => {
            then();
            void sayWithUndo(doneWords(value));
          },
        },
      ),
  };
}

/** Mould that was none brings a thrown-away jar back: asked once, with what it was instead. */
function NotMould({ sighting, onClose }: { readonly sighting: Sighting; readonly onClose: () => void }) {
  const [why, setWhy] = useState('');
  const { correct, send } = useCorrect();
  function submit(event: FormEvent) {
    event.preventDefault();
    send(sighting.id, why.trim(), onClose);
  }
  return (
    <Sheet title={words.notMouldTitle} onClose={onClose}>
      <form className="form" onSubmit={submit} noValidate>
        <p>{words.notMouldLine}</p>
        <Field label={words.notMouldWhy} fault={faultAt(correct.error, 'why')}>
          {(wiring) => (
            <input
              {...wiring}
              autoComplete="off"
              maxLength={400}
              value={why}
              onChange={({ target }) => setWhy(target.value)}
            />
          )}
        </Field>
        <div className="chips">
          {words.notMouldReasons.map((each) => (
            <button key={each} type="button" className="chip" onClick={() => setWhy(each)}>
              {each}
            </button>
          ))}
        </div>
        <div className="button-row">
          <Button type="submit" weight="main" disabled={correct.isPending}>
            {words.correctIt}
          </Button>
        </div>
      </form>
    </Sheet>
  );
}

/** The one way to take a sighting back: it was seen by mistake. It stays in the diary, struck through. */
export function CorrectSighting({ sighting }: { readonly sighting: Sighting }) {
  const [isAsking, setIsAsking] = useState(false);
  const { correct, send } = useCorrect();
  if (sighting.correctedAt !== null) return null;
  const isMould = sighting.what === 'mould';
  return (
    <>
      <Button
        weight="quiet"
        disabled={correct.isPending}
        aria-label={words.mistakeOf(sightingText(sighting), dayAndTime(sighting.seenAt))}
        onClick={() => (isMould ? setIsAsking(true) : send(sighting.id, '', () => {}))}
      >
        {words.mistake}
      </Button>
      {isAsking ? <NotMould sighting={sighting} onClose={() => setIsAsking(false)} /> : null}
    </>
  );
}
