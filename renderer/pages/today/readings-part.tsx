import { useEffect, useRef, useState } from 'react';
import { Link } from 'wouter';
import { ReadingLine } from '#renderer/parts/jar-work/reading-line.tsx';
import { watchedJar } from '#renderer/parts/jar-work/watched.ts';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { Need } from './need.ts';
import { words } from './words.ts';

function OpenReading({ jar }: { readonly jar: Need['jars'][number] }) {
  const place = useRef<HTMLDivElement>(null);
  // Whoever asked for the line wants to type into it.
  useEffect(() => place.current?.querySelector('input')?.focus(), []);
  return (
    <div ref={place} className="need-reading">
      <ReadingLine watched={watchedJar({ id: jar.id, label: jar.name })} />
      <Link href={`/jars/${jar.id}`}>{words.openJar(jar.name)}</Link>
    </div>
  );
}

/** A reading of one of the jars, in place: touch the jar, type the line. */
export function ReadingsPart({ jars }: { readonly jars: Need['jars'] }) {
  const [open, setOpen] = useState<string | null>(null);
  const shown = jars.find(({ id }) => id === open);
  return (
    <>
      <fieldset className="need-jars">
        <legend className="soft small">
          <Explained words={words.writeDown} />
        </legend>
        {jars.map(({ id, name }) => (
          <button
            key={id}
            type="button"
            className="chip need-jar"
            aria-expanded={id === open}
            aria-label={words.writeDownOf(name)}
            onClick={() => setOpen(id === open ? null : id)}
          >
            {name}
          </button>
        ))}
      </fieldset>
      {shown === undefined ? null : <OpenReading key={shown.id} jar={shown} />}
    </>
  );
}
