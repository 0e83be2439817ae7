import { Explained } from '#renderer/parts/term/explained.tsx';
import { madeOf, type Part } from './made-of-list.ts';
import { words } from './words.ts';

interface MadeOfProps {
  readonly parts?: readonly Part[];
}

/** The packages that came along with the program, by their licence: put in when it was built, read without a network. */
export function MadeOf({ parts = madeOf }: MadeOfProps) {
  const byLicence = [...Map.groupBy(parts, ({ licence }) => licence)].sort(([a], [b]) => a.localeCompare(b));
  return (
    <section className="section">
      <h2>
        <Explained words={words.madeOf} />
      </h2>
      <p>
        <Explained words={words.madeOfLead} />
      </p>
      {parts.length === 0 ? null : (
        <details>
          <summary>{words.madeOfShow(parts.length)}</summary>
          {byLicence.map(([licence, own]) => (
            <div key={licence} className="subsection">
              <h3>{licence}</h3>
              <ul className="made-of">
                {own.map(({ name, version }) => (
                  <li key={`${name} ${version}`}>
                    {name} {version}
                  </li>
                ))}
              </ul>
            </div>
          ))}
        </details>
      )}
    </section>
  );
}
