import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';
import './taken-out.css';

interface TakenOutListProps {
  readonly samples: ValueOf<'tastings:open'>['sampleList'];
  /** Names the jars as well as the codes, where the samples do. */
  readonly isForPouring?: boolean;
}

/** The samples that left a tasting because their jar was discarded: what to do with the cups, and what of the scores. */
export function TakenOutList({ samples, isForPouring = false }: TakenOutListProps) {
  const gone = samples.filter(({ takenOut }) => takenOut !== null);
  if (gone.length === 0) return null;
  return (
    <ul className="taken-out" aria-label={words.title} role="status">
      {gone.map(({ code, jar, takenOut }) => (
        <li key={code}>
          {isForPouring && jar !== null
            ? words.pouring(code, jar.label, takenOut?.why ?? '')
            : words.sentence(code, takenOut?.why ?? '')}
        </li>
      ))}
    </ul>
  );
}
