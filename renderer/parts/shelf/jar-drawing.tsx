import { memo, useId } from 'react';
import { type Addition, type Cover, ingredientName, type Vessel } from '#core/trial/formula.ts';
import { DayRing, type JarDay } from './day-ring.tsx';
import { fruitColour, jarColour } from './fruit-colour.ts';
import type { JarContents } from './jar-contents.ts';
import { Froth } from './jar-froth.tsx';
import { jarGeometry } from './jar-geometry.ts';
import { pieceLayers } from './piece-layers.ts';
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
  /** Froth was seen on it last. */
  readonly isFrothy?: boolean;
  /** Its day as a ring at the foot; absent while it does not stand. */
  readonly day?: JarDay | undefined;
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

interface GlassProps {
  readonly outline: string;
  readonly shoulder: number;
  readonly height: number;
  readonly neckWidth: number;
  readonly cover: Cover | null;
  readonly label: string;
}

/** What stays as it is while the jar is filled: glass, cover and label. */
const Glass = memo(function Glass({ outline, shoulder, height, neckWidth, cover, label }: GlassProps) {
  const tapeTop = shoulder + (height - shoulder) * 0.42;
  return (
    <>
      <path className="jar-outline" d={outline} />
      <path className="jar-shine" d={`M9 ${shoulder + 8}V${height - 14}`} />
      <Cap cover={cover} neck={neckWidth} centre={body / 2} top={0} />
      <g className="jar-tape" transform={`translate(${body / 2} ${tapeTop}) rotate(-1.5)`}>
        <path d="M-27 0L27 0L25 5L27 10L25 15L27 20L-27 20L-25 15L-27 10L-25 5Z" />
        <text y="14.5" textAnchor="middle">
          {label}
        </text>
      </g>
    </>
  );
});

const Bubbles = memo(function Bubbles({ height }: { readonly height: number }) {
  return (
    <g className="jar-bubbles">
      {[0.2, 0.42, 0.63, 0.8].map((share, place) => (
        <circle
          key={share}
          className="jar-bubble"
          cx={body * share}
          cy={height - 10 - place * 9 - (place % 2) * 14}
          r={1.3 + (place % 3) * 0.5}
        />
      ))}
    </g>
  );
});

/** A number of its own for each label, so that a jar looks the same each time it is drawn. */
function seedOf(label: string): number {
  let seed = 7;
  for (const letter of label) seed = (seed * 31 + letter.charCodeAt(0)) >>> 0;
  return seed;
}

const Back = memo(function Back({ outline, clip }: { readonly outline: string; readonly clip: string }) {
  return (
    <>
      <clipPath id={clip}>
        <path d={outline} />
      </clipPath>
      <path className="jar-glass" d={outline} />
    </>
  );
});

interface DrinkProps {
  readonly height: number;
  /** How deep the layer of pieces is. */
  readonly depth: number;
  readonly additions: readonly Addition[];
  readonly progress: number;
  readonly seed: number;
}

/** The drink from its top down, with the pieces that float in it. */
const Drink = memo(function Drink({ height, depth, additions, progress, seed }: DrinkProps) {
  const pieces = additions.filter(({ state }) => state !== 'liquid');
  const tint = jarColour(additions);
  const layers = pieceLayers(
    { depth, left: 3, right: body - 3 },
    pieces.map(({ mass_g }) => mass_g),
    seed,
  );
  return (
    <>
      <rect className="jar-liquid" width={body} height={height} />
      {tint === null ? null : (
        <rect width={body} height={height} fill={tint} opacity={0.16 + 0.5 * Math.min(1, progress)} />
      )}
      {layers.map(({ part, path }) => (
        <path
          key={part}
          d={path}
          className="jar-piece"
          fill={fruitColour(ingredientName(pieces[part]?.ingredient ?? ''))}
        />
      ))}
    </>
  );
});

/** One vessel drawn from its own numbers: fill height, pieces, headspace, cover, and its label on a strip of tape. */
export function JarDrawing(props: JarDrawingProps) {
  const { vessel, contents, additions, cover, label, progress = 0, isBubbling = false, isGhost = false, words } = props;
  const { isFrothy = false, day } = props;
  const clip = useId();
  const drawn = jarGeometry({ ...vessel, ...contents }, body);
  const depth = drawn.piecesBottom - drawn.liquidTop;
  return (
    <svg
      className={isGhost ? 'jar is-ghost' : 'jar'}
      viewBox={`-6 ${-headroom} ${body + 12} ${drawn.height + headroom + 1}`}
      preserveAspectRatio="xMidYMax meet"
      role="img"
      aria-label={words}
    >
      <Back outline={drawn.outline} clip={clip} />
      <g clipPath={`url(#${clip})`}>
        {/* All that rises and falls moves as one: a full shelf is drawn again while a slider moves. */}
        <g className="jar-fill" transform={`translate(0 ${drawn.liquidTop})`}>
          <Drink
            height={drawn.height}
            // Drawn to half a unit, so that a jar whose fill moves keeps its pieces.
            depth={Math.round(2 * depth) / 2}
            additions={additions}
            progress={progress}
            seed={seedOf(label)}
          />
          {isFrothy ? <Froth width={body} seed={seedOf(label)} /> : null}
        </g>
        {isBubbling ? <Bubbles height={drawn.height} /> : null}
      </g>
      <Glass
        outline={drawn.outline}
        shoulder={drawn.shoulder}
        height={drawn.height}
        neckWidth={drawn.neckWidth}
        cover={cover}
        label={label}
      />
      {day === undefined ? null : <DayRing x={body - 8} y={drawn.height - 14} {...day} />}
    </svg>
  );
}
