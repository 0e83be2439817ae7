import { Fragment } from 'react';
import type { BottleWords } from './bottle-words.ts';
import { words } from './words.ts';
import './bottle-label.css';

/** What stands on one bottle. */
export function BottleLabel({ label, volume }: { readonly label: BottleWords; readonly volume: string }) {
  const letters = label.ingredients.flat().reduce((sum, { text }) => sum + text.length, 0);
  return (
    <div className={letters > 220 ? 'bottle-label is-long' : 'bottle-label'}>
      <p className="bottle-name">{label.name}</p>
      <p>
        {words.ingredients}:{' '}
        {label.ingredients.map((pieces, place) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the order of weight is what tells them apart
          <Fragment key={place}>
            {place === 0 ? null : ', '}
            {pieces.map(({ text, isAllergen }) => (isAllergen ? <b key={text}>{text}</b> : text))}
          </Fragment>
        ))}
        .
      </p>
      {label.contains.length === 0 ? null : (
        <p>
          {words.contains}: <b>{label.contains.join(', ')}</b>.
        </p>
      )}
      <p>{label.lines.join(' ')}</p>
      <p className="bottle-facts">
        {label.facts.map(({ name, value }) => (
          <span key={name}>
            {name}: {value}
          </span>
        ))}
        <span className="bottle-volume">{volume}</span>
      </p>
    </div>
  );
}
