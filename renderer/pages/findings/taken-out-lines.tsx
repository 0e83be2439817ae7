import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

/** The jars that left a tasting before it was revealed: the finding stands without them, and says so. */
export function TakenOutLines({ lines }: { readonly lines: ValueOf<'findings:read'>['takenOut'] }) {
  if (lines.length === 0) return null;
  return (
    <section className="section" aria-label={words.takenOut}>
      <h2>
        <Explained words={words.takenOut} />
      </h2>
      <ul className="headline-doubts">
        {lines.map(({ tasting, jar, sentence }) => (
          <li key={`${tasting} ${jar}`}>{sentence}</li>
        ))}
      </ul>
    </section>
  );
}
