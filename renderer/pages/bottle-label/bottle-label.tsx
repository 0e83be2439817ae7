import { Fragment } from 'react';
import type { Fit } from '#renderer/parts/paper/use-fit.ts';
import type { BottleWords } from './bottle-words.ts';
import { words } from './words.ts';
import './bottle-label.css';

interface BottleLabelProps {
  readonly label: BottleWords;
  readonly volume: string;
  /** All labels are alike: the first is measured, the others follow it. */
  readonly fit: Fit;
  readonly isFirst: boolean;
}

/** What stands on one bottle. */
export function BottleLabel({ label, volume, fit, isFirst }: BottleLabelProps) {
  return (
    <div className="bottle-label" {...(isFirst ? { ref: fit.ref } : { style: { '--fit': fit.fit } })}>
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
