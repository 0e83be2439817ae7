import { ReadingLine } from './reading-line.tsx';
import { TitrationPart } from './titration-part.tsx';
import type { Watched } from './watched.ts';
import './jar-work.css';

/** Writes down what was measured: a line for what instruments show, and a sum for a titration. */
export function ReadingEntry({ watched }: { readonly watched: Watched }) {
  return (
    <div className="reading-entry">
      <ReadingLine watched={watched} />
      <TitrationPart watched={watched} />
    </div>
  );
}
