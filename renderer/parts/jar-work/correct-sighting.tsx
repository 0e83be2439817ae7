import { useState } from 'react';
import { useRequest } from '#renderer/app/use-request.ts';
import { dayAndTime } from '#renderer/format/moments.ts';
import { joined } from '#renderer/format/words.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { faultAt } from '#renderer/parts/field/fault-at.ts';
import { useSayWithUndo } from '#renderer/parts/toast/use-say-with-undo.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { ReasonSheet } from './reason-sheet.tsx';
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
  const { correct, send } = useCorrect();
  return (
    <ReasonSheet
      title={words.notMouldTitle}
      label={words.notMouldWhy}
      fault={faultAt(correct.error, 'why')}
      reasons={words.notMouldReasons}
      act={words.correctIt}
      weight="main"
      isPending={correct.isPending}
      onSend={(why) => send(sighting.id, why.trim(), onClose)}
      onClose={onClose}
    >
      <p>{words.notMouldLine}</p>
    </ReasonSheet>
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
