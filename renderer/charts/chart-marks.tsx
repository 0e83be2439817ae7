import { phrase } from '#core/words/phrase.ts';
import { figureWords } from './figure-words.ts';

interface PlacedProps {
  /** Given by the chart for each row. */
  readonly cx?: number | undefined;
  readonly cy?: number | undefined;
}

interface MeanDotProps extends PlacedProps {
  readonly colour: string;
  readonly value?: unknown;
  readonly payload?: { readonly x: number } | undefined;
  /** Where the best-liked level stands: its mean is ringed and said. */
  readonly bestX?: number | null | undefined;
  /** From its middle to its corners. */
  readonly reach?: number;
}

/** A diamond with its figure beside it. Rows without a mean draw nothing. */
export function MeanDot({ colour, cx, cy, value, payload, bestX = null, reach = 7 }: MeanDotProps) {
  if (typeof cx !== 'number' || typeof cy !== 'number' || typeof value !== 'number') return null;
  const isBest = bestX !== null && payload?.x === bestX;
  return (
    <g>
      {isBest ? <circle cx={cx} cy={cy} r={reach + 5} fill="none" stroke={colour} strokeWidth={2} /> : null}
      <path
        d={`M${cx} ${cy - reach}L${cx + reach} ${cy}L${cx} ${cy + reach}L${cx - reach} ${cy}Z`}
        fill={colour}
        stroke="var(--linen)"
        strokeWidth={1.5}
      />
      <text x={cx + reach + (isBest ? 8 : 3)} y={cy - reach - 1} className="chart-mean-words">
        {figureWords(value)}
        {isBest ? phrase` best` : ''}
      </text>
    </g>
  );
}

/** A cross: the maker's own sip. */
export function SipCross({ cx, cy }: PlacedProps) {
  if (typeof cx !== 'number' || typeof cy !== 'number' || !Number.isFinite(cx + cy)) return null;
  return (
    <path
      className="chart-sip"
      d={`M${cx - 5} ${cy - 5}l10 10M${cx + 5} ${cy - 5}l-10 10`}
      stroke="var(--ink)"
      strokeWidth={2.25}
      fill="none"
    />
  );
}
