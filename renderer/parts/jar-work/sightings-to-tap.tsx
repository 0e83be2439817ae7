import { type FormEvent, useState } from 'react';
import { useRequest } from '#renderer/app/use-request.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { Field } from '#renderer/parts/field/field.tsx';
import { useSayWithUndo } from '#renderer/parts/toast/use-say-with-undo.ts';
import { sightingKinds } from '#shared/contract/jars.ts';
import type { Jar } from './next-act.ts';
import { sightingWords, words } from './words.ts';

const toTap = sightingKinds.filter((kind) => kind !== 'mould' && kind !== 'other');

/** What is seen in a jar, a tap each; mould stands apart, because it discards the jar. */
export function SightingsToTap({ jar }: { readonly jar: Jar }) {
  const [note, setNote] = useState('');
  const sayWithUndo = useSayWithUndo();
  const log = useRequest('sightings:log');
  const write = (what: (typeof sightingKinds)[number], said = '') =>
    log.mutate(
      { jar: jar.id, what, ...(said === '' ? {} : { note: said }) },
      {
        onSuccess: ({ discarded }) => {
          if (said !== '') setNote('');
          void sayWithUndo(discarded ? words.moulded(jar.label) : words.noted(jar.label));
        },
      },
    );

  function send(event: FormEvent) {
    event.preventDefault();
    if (note.trim() !== '') write('other', note.trim());
  }

  return (
    <fieldset className="sightings">
      <legend className="field-legend">{words.seen}</legend>
      <div className="chips">
        {toTap.map((kind) => (
          <button key={kind} type="button" className="chip" disabled={log.isPending} onClick={() => write(kind)}>
            {sightingWords[kind]}
          </button>
        ))}
      </div>
      <form className="quick-note" onSubmit={send}>
        <Field label={words.seenNote}>
          {(wiring) => (
            <input
              {...wiring}
              autoComplete="off"
              maxLength={4000}
              value={note}
              onChange={({ target }) => setNote(target.value)}
            />
          )}
        </Field>
        <Button type="submit" disabled={log.isPending}>
          {words.noteIt}
        </Button>
      </form>
      <div className="sightings-mould">
        <Button weight="grave" disabled={log.isPending} onClick={() => write('mould')}>
          {words.mould}
        </Button>
        <p className="soft small">{words.mouldLine}</p>
      </div>
    </fieldset>
  );
}
