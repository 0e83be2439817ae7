import type { ValueOf } from '#shared/contract/all-requests.ts';
import { stripAnchor, stripPlace, stripWords } from './guess-strip-words.ts';
import type { Method } from './words.ts';

type Result = NonNullable<ValueOf<'discriminations:open'>['result']>;

const most = 40;

/** The count against what luck gives: one line from none to all, the part that is more than luck hatched. */
export function GuessStrip({ result, method }: { readonly result: Result; readonly method: Method }) {
  const { correct, trials, expectedByGuessing, minimumCorrect } = result;
  const said = stripWords(result, method);
  const at = (count: number) => stripPlace(count, trials);
  const percent = (count: number) => `${at(count)}%`;
  // A step of one is drawn where there is room for it.
  const ticks = trials > most ? [] : Array.from({ length: trials + 1 }, (_, count) => count);
  return (
    <svg className="apart-strip" role="img" aria-label={said.whole} width="100%" height="132">
      <defs>
        <pattern id="apart-hatch" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <path d="M0 0V7" className="apart-hatch" />
        </pattern>
      </defs>
      <text x={percent(correct)} y="18" textAnchor={stripAnchor(at(correct))} className="apart-strip-count">
        {said.count}
      </text>
      {minimumCorrect === null ? null : (
        <rect
          x={`${at(minimumCorrect - 0.5)}%`}
          y="34"
          width={`${at(trials) - at(minimumCorrect - 0.5) + 3}%`}
          height="28"
          fill="url(#apart-hatch)"
          className="apart-strip-beyond"
        />
      )}
      <line x1="0" x2="100%" y1="48" y2="48" className="apart-strip-line" />
      {ticks.map((count) => (
        <line key={count} x1={percent(count)} x2={percent(count)} y1="44" y2="52" className="apart-strip-line" />
      ))}
      <line
        x1={percent(expectedByGuessing)}
        x2={percent(expectedByGuessing)}
        y1="34"
        y2="72"
        className="apart-strip-luck"
      />
      <svg x={percent(correct)} y="48" overflow="visible" aria-hidden="true">
        <path d="M0 -12L11 0L0 12L-11 0Z" className="apart-strip-mark" />
      </svg>
      <text x={percent(expectedByGuessing)} y="90" textAnchor={stripAnchor(at(expectedByGuessing))}>
        {said.luck}
      </text>
      <text x="100%" y="118" textAnchor="end">
        {said.beyond}
      </text>
    </svg>
  );
}
