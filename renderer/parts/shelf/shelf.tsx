import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { JarDrawing, type JarDrawingProps } from './jar-drawing.tsx';
import './shelf.css';

export interface ShelfJar extends JarDrawingProps {
  readonly key: string;
  /** Written under the jar on the shelf's edge. */
  readonly under: ReactNode;
  /** Where the whole place leads, with the words of the link. */
  readonly to?: { readonly href: string; readonly words: string };
}

const roomyUpTo = 7;

/** Jars side by side on planks. Many jars take several planks; the page never scrolls sideways for them. */
export function Shelf({ jars, label }: { readonly jars: readonly ShelfJar[]; readonly label: string }) {
  return (
    <ul className={jars.length <= roomyUpTo ? 'shelf is-roomy' : 'shelf'} aria-label={label}>
      {jars.map(({ key, under, to, ...drawing }) => (
        <li key={key} className="shelf-place">
          <div className="shelf-jar">
            <JarDrawing {...drawing} />
          </div>
          <div className="shelf-under">{under}</div>
          {to === undefined ? null : (
            <Link href={to.href} className="shelf-link">
              <span className="unseen">{to.words}</span>
            </Link>
          )}
        </li>
      ))}
    </ul>
  );
}
