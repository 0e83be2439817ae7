import { Explained } from '#renderer/parts/term/explained.tsx';
import { usePlan } from './plan-context.ts';
import { words } from './words.ts';

/** Notes that belong to the filling, not to the planning. */
const laterNotes: readonly string[] = ['fill-order'];

/** What is good to know about a plan that works. */
export function PlanNotesList() {
  const { judged } = usePlan();
  const notes = judged.isReady ? judged.notes.filter(({ code }) => !laterNotes.includes(code)) : [];
  if (notes.length === 0) return null;
  return (
    <div className="subsection">
      <h3>
        <Explained words={words.notes} />
      </h3>
      <ul className="plan-notes">
        {notes.map(({ code, message }) => (
          <li key={code}>{message}</li>
        ))}
      </ul>
    </div>
  );
}
