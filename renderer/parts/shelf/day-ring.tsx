import { memo } from 'react';

/** How far a jar has come: its day, and the share of its planned days as a ring. */
export interface JarDay {
  readonly day: number;
  /** 0–1. */
  readonly share: number;
  /** Past its planned pull. */
  readonly isLate: boolean;
}

interface DayRingProps extends JarDay {
  readonly x: number;
  readonly y: number;
}

const radius = 10;
const around = 2 * Math.PI * radius;

/** A ring that fills clockwise with the jar's days, its day in it; a late jar's ring is whole and has a mark on top. */
export const DayRing = memo(function DayRing({ x, y, day, share, isLate }: DayRingProps) {
  const done = isLate ? 1 : Math.min(1, Math.max(0, share));
  return (
    <g className={isLate ? 'day-ring is-late' : 'day-ring'} transform={`translate(${x} ${y})`}>
      <circle className="day-ring-ground" r={radius + 2.5} />
      <circle className="day-ring-track" r={radius} />
      {done === 0 ? null : (
        <circle
          className="day-ring-done"
          r={radius}
          transform="rotate(-90)"
          strokeDasharray={`${(done * around).toFixed(2)} ${around.toFixed(2)}`}
        />
      )}
      <text y={day > 99 ? 3 : 4} textAnchor="middle" className={day > 99 ? 'is-long' : undefined}>
        {day}
      </text>
      {isLate ? <path className="day-ring-mark" d={`M-3.5 ${-radius - 5.5}h7l-3.5 5z`} /> : null}
    </g>
  );
});
