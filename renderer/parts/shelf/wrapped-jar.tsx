import './wrapped-jar.css';

interface WrappedJarProps {
  /** The blind code: all that is known of it. */
  readonly code: string;
  /** Its jar was thrown away: the paper stands empty. */
  readonly isGone: boolean;
  /** Said to those who can't see it. */
  readonly words: string;
}

/**
 * A jar in brown paper with string around its neck and its blind code on the shoulder. All are drawn alike: neither size, fill, fruit
 * nor day can tell which jar stands in the paper.
 */
export function WrappedJar({ code, isGone, words }: WrappedJarProps) {
  return (
    <svg
      className={isGone ? 'wrapped is-gone' : 'wrapped'}
      viewBox="-6 -16 88 127"
      preserveAspectRatio="xMidYMax meet"
      role="img"
      aria-label={words}
    >
      <path className="wrapped-top" d="M17 14L9 -7L19 -1L26 -10L34 -2L42 -11L50 -1L58 -9L68 -4L59 14Q38 9 17 14Z" />
      <path
        className="wrapped-paper"
        d="M17 15Q38 10 59 15Q60 24 67 29Q73 33 73 42L75 104Q75 110 69 110L7 110Q1 110 1 104L3 42Q3 33 9 29Q16 24 17 15Z"
      />
      <path className="wrapped-fold" d="M13 32L9 108M63 32L67 108M20 18L24 30M56 18L52 30M38 16V27" />
      <path className="wrapped-string" d="M16 15Q38 21 60 15M16.5 18Q38 24 59.5 18" />
      <path
        className="wrapped-bow"
        d="M38 20C28 8 20 14 27 20C31 23 35 21 38 20C48 8 56 14 49 20C45 23 41 21 38 20M38 20L32 31M38 20L45 30"
      />
      <g transform="translate(38 52) rotate(-1.5)">
        <path className="wrapped-tape" d="M-27 0L27 0L25 5.5L27 11L25 16.5L27 22L-27 22L-25 16.5L-27 11L-25 5.5Z" />
        <text y="16.5" textAnchor="middle">
          {code}
        </text>
        {isGone ? <path className="wrapped-strike" d="M-22 11.5H22" /> : null}
      </g>
    </svg>
  );
}
