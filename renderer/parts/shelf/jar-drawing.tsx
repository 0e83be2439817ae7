import { useId } from 'react';
import { type Addition, type Cover, ingredientName, type Vessel } from '#core/trial/formula.ts';
import { fruitColour, jarColour } from './fruit-colour.ts';
import type { JarContents } from './jar-contents.ts';
import { jarGeometry } from './jar-geometry.ts';
import { pieceDots } from './piece-dots.ts';
import './jar-drawing.css';

export interface JarDrawingProps {
  readonly vessel: Vessel;
  readonly contents: JarContents;
  readonly additions: readonly Addition[];
  readonly cover: Cover | null;
  /** What stands on the tape: the jar's label. */
  readonly label: string;
  /** Share of its days that the jar has stood, 0–1: the drink takes on the fruit's colour with time. */
  readonly progress?: number;
  readonly isBubbling?: boolean;
  /** Drawn with a dashed glass: not filled yet, or thrown away. */
  readonly isGhost?: boolean;
  /** Said to those who can't see it. */
  readonly words: string;
}

const body = 76;
const headroom = 16;

function Cap({ cover, neck, centre, top }: { cover: Cover | null; neck: number; centre: number; top: number }) {
  const left = centre - neck / 2;
  if (cover === 'cloth')
    return (
      <path
        className="jar-cloth"
        d={`M${left - 4} ${top + 6}Q${left - 3} ${top - 5} ${centre} ${top - 6}Q${left + neck + 3} ${top - 5} ${left + neck + 4} ${top + 6}l-3-2-4 4-4-4-4 4-${neck / 2 - 12} -3-${neck / 2 - 12} 3-4-4-4 4-4-4z`}
      />
    );
  if (cover === 'airlock')
    return (
      <g className="jar-lid">
        <rect x={left - 2} y={top - 4} width={neck + 4} height={7} rx={2} />
        <path className="jar-airlock" d={`M${centre} ${top - 4}v-4a3 3 0 0 1 6 0v2a3 3 0 0 0 6 0v-5`} />
      </g>
    );
  if (cover === 'lid') return <rect className="jar-lid" x={left - 2} y={top - 6} width={neck + 4} height={9} rx={2} />;
  return null;
}

/** One vessel drawn from its own numbers: fill height, pieces, headspace, cover, and its label on a strip of tape. */
export function JarDrawing(props: JarDrawingProps) {
  const { vessel, contents, additions, cover, label, progress = 0, isBubbling = false, isGhost = false, words } = props;
  const clip = useId();
  const drawn = jarGeometry({ ...vessel, ...contents }, body);
  const pieces = additions.filter(({ state }) => state !== 'liquid');
  const tint = jarColour(additions);
  const dots = pieceDots(
    { top: drawn.liquidTop, bottom: drawn.piecesBottom, left: 3, right: body - 3 },
    pieces.map(({ mass_g }) => mass_g),
    [...label].reduce((sum, letter) => sum * 31 + letter.charCodeAt(0), 7),
  );
  const tapeTop = drawn.shoulder + (drawn.height - drawn.shoulder) * 0.42;
  const bubbles = isBubbling ? [0.2, 0.42, 0.63, 0.8] : [];
  return (
    <svg
      className={isGhost ? 'jar is-ghost' : 'jar'}
      viewBox={`-6 ${-headroom} ${body + 12} ${drawn.height + headroom + 1}`}
      preserveAspectRatio="xMidYMax meet"
      role="img"
      aria-label={words}
    >
      <clipPath id={clip}>
        <path d={drawn.outline} />
      </clipPath>
      <path className="jar-glass" d={drawn.outline} />
      <path className="jar-liquid" d={drawn.liquid} />
      {tint === null ? null : <path d={drawn.liquid} fill={tint} opacity={0.16 + 0.5 * Math.min(1, progress)} />}
      <g clipPath={`url(#${clip})`}>
        {dots.map(({ x, y, r, part }) => (
          <circle
            key={`${x}-${y}`}
            cx={x}
            cy={y}
            r={r}
            className="jar-piece"
            fill={fruitColour(ingredientName(pieces[part]?.ingredient ?? ''))}
          />
        ))}
        {bubbles.map((share, place) => (
          <circle
            key={share}
            className="jar-bubble"
            cx={body * share}
            cy={drawn.height - 10 - place * 9 - (place % 2) * 14}
            r={1.3 + (place % 3) * 0.5}
          />
        ))}
      </g>
      <path className="jar-outline" d={drawn.outline} />
      <path className="jar-shine" d={`M9 ${drawn.shoulder + 8}V${drawn.height - 14}`} />
      <Cap cover={cover} neck={drawn.neckWidth} centre={body / 2} top={0} />
      <g className="jar-tape" transform={`translate(${body / 2} ${tapeTop}) rotate(-1.5)`}>
        <path d="M-27 0L27 0L25 5L27 10L25 15L27 20L-27 20L-25 15L-27 10L-25 5Z" />
        <text y="14.5" textAnchor="middle">
          {label}
        </text>
      </g>
    </svg>
  );
}
