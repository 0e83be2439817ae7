import { type FormEvent, useState } from 'react';
import { useRequest } from '#renderer/app/use-request.ts';
import { joined } from '#renderer/format/words.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { Field } from '#renderer/parts/field/field.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { useSayWithUndo } from '#renderer/parts/toast/use-say-with-undo.ts';
import { sightingKinds } from '#shared/closed-lists.ts';
import type { Jar } from './next-act.ts';
import { SmellEntry } from './smell-entry.tsx';
import { type Watched, watchedJar } from './watched.ts';
import { sightingWords, words } from './words.ts';

const apart: readonly (typeof sightingKinds)[number][] = ['mould', 'smell', 'other', 'looked', 'stirred'];
const toTap = sightingKinds.filter((kind) => !apart.includes(kind));

/** What is seen in a jar, a tap each; mould stands apart, because it discards the jar. */
export function SightingsToTap({ jar }: { readonly jar: Jar }) {
  return <SightingEntry watched={watchedJar(jar)} />;
}

/** What is seen in a jar or a base. Mould in a base asks for care too, but only a jar is discarded here. */
export function SightingEntry({ watched }: { readonly watched: Watched }) {
  const isJar = 'jar' in watched.owner;
  const [note, setNote] = useState('');
  const [isSmelling, setIsSmelling] = useState(false);
  const sayWithUndo = useSayWithUndo();
  const log = useRequest('sightings:log');
  const write = (what: (typeof sightingKinds)[number], said = '') =>
    log.mutate(
      { ...watched.owner, what, ...(said === '' ? {} : { note: said }) },
      {
        onSuccess: ({ discarded, tastings }) => {
          if (what === 'other') setNote('');
          if (what === 'smell') setIsSmelling(false);
          const out = tastings.length === 0 ? '' : ` ${words.outOf(joined(tastings))}`;
          void sayWithUndo(discarded ? `${words.moulded(watched.name)}${out}` : words.noted(watched.name));
        },
      },
    );

  function send(event: FormEvent) {
    event.preventDefault();
    if (note.trim() !== '') write('other', note.trim());
  }

  return (
    <fieldset className="sightings">
      <legend className="field-legend">
        <Explained words={words.seen} />
      </legend>
      <div className="chips">
        {toTap.map((kind) => (
          <button key={kind} type="button" className="chip" disabled={log.isPending} onClick={() => write(kind)}>
            {sightingWords[kind]}
          </button>
        ))}
        <button
          type="button"
          className="chip"
          aria-expanded={isSmelling}
          disabled={log.isPending}
          onClick={() => setIsSmelling(!isSmelling)}
        >
          {words.smellChip}
        </button>
      </div>
      {isSmelling ? <SmellEntry isBusy={log.isPending} onNote={(smell) => write('smell', smell)} /> : null}
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
          {isJar ? words.mould : words.mouldOfBase}
        </Button>
        <p className="soft small">
          <Explained words={isJar ? words.mouldLine : words.mouldLineOfBase} />
        </p>
      </div>
    </fieldset>
  );
}
