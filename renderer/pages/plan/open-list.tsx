import { glued } from '#renderer/format/glued.ts';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { usePlan } from './plan-context.ts';
import { words } from './words.ts';

const shown = 6;

/** The first thing to type in or tap at a place of the form. */
export function goTo(at: string): void {
  const steps = at.split('.');
  for (let length = steps.length; length > 0; length -= 1) {
    const place = document.querySelector(`[data-at="${steps.slice(0, length).join('.')}"]`);
    const field = place?.querySelector<HTMLElement>('input, select, textarea, button') ?? null;
    if (field === null) continue;
    place?.closest('details')?.setAttribute('open', '');
    field.focus({ preventScroll: true });
    place?.scrollIntoView({ block: 'center' });
    return;
  }
  const radio = document.querySelector<HTMLElement>(at === 'control' ? 'input[name="plan-control"]' : 'textarea');
  radio?.focus();
}

function placeWords(at: string): string {
  const [first, position] = at.split('.');
  return first === 'levels' && position !== undefined
    ? `${words.jar(String.fromCharCode(65 + Number(position)))}: `
    : '';
}

/** What is still open, each line leading to its field; what holds for every jar is said once. */
export function OpenList() {
  const { judged } = usePlan();
  const lines = judged.sentences.map(({ at, message }) => ({ at, line: `${placeWords(at)}${message}` }));
  const sentences = lines.filter(({ line }, place) => lines.findIndex((one) => one.line === line) === place);
  if (sentences.length === 0) return <p className="plan-ready">{words.ready}</p>;
  return (
    <div className="subsection">
      <h3>
        <Explained words={words.open} />
      </h3>
      <ul className="plan-open">
        {sentences.slice(0, shown).map(({ at, line }) => (
          <li key={line}>
            <button type="button" className="plan-go" onClick={() => goTo(at)}>
              {glued(line)}
            </button>
          </li>
        ))}
      </ul>
      {sentences.length > shown ? <p className="soft small">{words.andMore(sentences.length - shown)}</p> : null}
    </div>
  );
}
