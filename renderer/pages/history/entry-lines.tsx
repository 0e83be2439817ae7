import { glued } from '#renderer/format/glued.ts';
import { useMeasures } from '#renderer/format/use-measures.ts';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { type Change, type Entry, whatChanged } from './what-changed.ts';
import { words } from './words.ts';

function ChangeLine({ change }: { readonly change: Change }) {
  return (
    <div>
      <dt>{change.name}</dt>
      <dd>
        {change.before === null ? null : (
          <>
            <span className="was">{glued(change.before)}</span> <span className="unseen">{words.became}</span>
            <span aria-hidden="true">→</span>{' '}
          </>
        )}
        <span>{glued(change.after)}</span>
      </dd>
    </div>
  );
}

/** What one change made of one row, part by part. */
export function EntryLines({ entry }: { readonly entry: Entry }) {
  const measures = useMeasures();
  if (entry.isErased)
    return (
      <p className="soft">
        <Explained words={words.erased} />
      </p>
    );
  if (entry.after === null)
    return (
      <p className="soft">
        <Explained words={words.removed} />
      </p>
    );
  const changes = whatChanged(entry, measures);
  if (changes.length === 0)
    return (
      <p className="soft">
        <Explained words={words.unchanged} />
      </p>
    );
  return (
    <dl className="cell-changes">
      {changes.map((change) => (
        <ChangeLine key={change.column} change={change} />
      ))}
    </dl>
  );
}
