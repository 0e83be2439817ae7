import { Link } from 'wouter';
import { useAnswer } from '#renderer/app/use-answer.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';
import { WrappedJar } from './wrapped-jar.tsx';
import './shelf.css';

interface WrappedShelfProps {
  readonly samples: ValueOf<'tastings:open'>['sampleList'];
  readonly label: string;
  /** Where the jars lead, if anywhere. */
  readonly to?: string;
}

/** The samples of an open tasting as jars in paper, in the order of their codes: nothing on it tells which jar is which. */
export function WrappedShelf({ samples, label, to }: WrappedShelfProps) {
  const byCode = samples.toSorted((one, other) => one.code.localeCompare(other.code));
  return (
    <ul className={byCode.length <= 7 ? 'shelf is-roomy' : 'shelf'} aria-label={label}>
      {byCode.map(({ code, takenOut }) => (
        <li key={code} className="shelf-place">
          <div className="shelf-jar">
            <WrappedJar
              code={code}
              isGone={takenOut !== null}
              words={takenOut === null ? words.wrapped(code) : words.wrappedGone(code, takenOut.why)}
            />
          </div>
          <div className="shelf-under">
            {takenOut === null ? null : <span className="soft">{words.takenAway}</span>}
          </div>
          {to === undefined ? null : (
            <Link href={to} className="shelf-link">
              <span className="unseen">{words.openTasting(code)}</span>
            </Link>
          )}
        </li>
      ))}
    </ul>
  );
}

/** The same of a tasting known by its id. */
export function WrappedTasting({ tasting }: { readonly tasting: string }) {
  const open = useAnswer('tastings:open', { tasting });
  if (open.data === undefined || open.data.closedAt !== null) return null;
  return (
    <WrappedShelf samples={open.data.sampleList} label={words.wrappedFor(open.data.name)} to={`/tastings/${tasting}`} />
  );
}
