import { type Attribute, slopePoints, type Wish } from './wish.ts';

const width = 200;
const height = 44;

/** How right each value of the scale is: up is right, down will not do. The fields say the same in figures. */
export function WishSlope({ wish, attribute }: { readonly wish: Wish; readonly attribute: Attribute }) {
  const from = Math.min(attribute.low, wish.low);
  const to = Math.max(attribute.high, wish.high);
  const x = (value: number) => ((value - from) / (to - from)) * width;
  const line = slopePoints(wish, from, to)
    .map(([value, right]) => `${x(value).toFixed(1)} ${(height - 3 - right * (height - 6)).toFixed(1)}`)
    .join('L');
  return (
    <svg className="wish-slope" viewBox={`0 0 ${width} ${height}`} preserveAspectRatio="none" aria-hidden="true">
      <path d={`M${line}L${width} ${height}L0 ${height}Z`} className="wish-slope-area" />
      <path d={`M${line}`} className="wish-slope-line" vectorEffect="non-scaling-stroke" />
    </svg>
  );
}
