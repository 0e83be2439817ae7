import { Explained } from '#renderer/parts/term/explained.tsx';
import type { Scale } from './cell-text.ts';
import { orderSoFar, type RankedCup } from './place-faults.ts';
import { rankedWords } from './ranked-words.ts';
import './places-so-far.css';

/** The order that the places given so far make, best first. */
export function PlacesSoFar({ cups, scale }: { readonly cups: readonly RankedCup[]; readonly scale: Scale }) {
  const order = orderSoFar(cups, scale);
  return (
    <section className="so-far" aria-label={rankedWords.soFar}>
      <h2 className="so-far-title">
        <Explained words={rankedWords.soFar} />
      </h2>
      {order.length === 0 ? (
        <p className="soft">
          <Explained words={rankedWords.nothingYet} />
        </p>
      ) : (
        <ol className="so-far-order">
          {order.map(({ place, names }) => (
            <li key={place}>
              <span className="so-far-place">{place === 1 ? `1 ${rankedWords.best}` : place}</span>
              <strong>{rankedWords.cups(names)}</strong>
            </li>
          ))}
        </ol>
      )}
    </section>
  );
}
