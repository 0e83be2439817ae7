import { memo } from 'react';

interface FrothProps {
  readonly width: number;
  readonly seed: number;
}

function circle(x: number, y: number, r: number): string {
  const [radius, across] = [r.toFixed(1), (2 * r).toFixed(1)];
  return `M${(x - r).toFixed(1)} ${y.toFixed(1)}a${radius} ${radius} 0 1 0 ${across} 0a${radius} ${radius} 0 1 0 -${across} 0`;
}

/** A row of foam: bubbles of unlike size, each a little off its place, the same for a jar each time it is drawn. */
function row(width: number, seed: number, { y, step, r }: { y: number; step: number; r: number }): string[] {
  let state = seed || 1;
  const next = () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 4_294_967_296;
  };
  return Array.from({ length: Math.ceil(width / step) + 1 }, (_, place) =>
    circle(place * step + (next() - 0.5) * 2, y + (next() - 0.5) * 2, r * (0.7 + 0.5 * next())),
  );
}

/** Froth on the drink, heaped where y is 0. */
export const Froth = memo(function Froth({ width, seed }: FrothProps) {
  const back = row(width, seed, { y: -5.5, step: 8, r: 4.4 });
  const front = row(width, seed + 1, { y: -1.5, step: 6.5, r: 4.6 });
  return (
    <g className="jar-froth">
      <path className="jar-foam is-back" d={back.join('')} />
      <path className="jar-foam" d={front.join('')} />
      <path className="jar-foam-ring" d={front.filter((_, place) => place % 3 === 1).join('')} />
    </g>
  );
});
