import type { CautionCode, Caution as SaidCaution } from '#core/ferment/caution.ts';
import { phrase } from '#core/words/phrase.ts';
import { Caution } from './caution.tsx';
import './caution-list.css';

/** What can hurt soon, or concerns whoever is handed a glass: never folded away. */
const grave: readonly CautionCode[] = [
  'vessel-unrated',
  'pressure-above-rating',
  'pressure-sparkling',
  'pressure-glass-limit',
  'overfull',
  'headspace-froth',
  'ph-high',
  'ph-rising',
  'ph-guidance',
  'mould',
  'base-mould',
  'alcohol-line',
  'alcohol-unknown',
  'sugar-at-closing',
  'preserved-juice',
  'honey-infants',
  'allergens',
];

const names: Readonly<Partial<Record<CautionCode, string>>> = {
  'alcohol-bound': phrase`alcohol`,
  'cold-start': phrase`the cold start`,
  'ph-measure': phrase`acidity`,
  'live-drink': phrase`who should ask first`,
  'chlorinated-water': phrase`tap water`,
  selling: phrase`selling`,
};

interface CautionListProps {
  readonly cautions: readonly SaidCaution[];
  /** Said elsewhere on the page. */
  readonly without?: readonly CautionCode[];
}

/** The usual cautions, each with its basis and each once: the grave ones open, the standing ones folded with their names outside. */
export function CautionList({ cautions, without = [] }: CautionListProps) {
  const said = [...new Map(cautions.map((one) => [`${one.code} ${one.message}`, one])).values()].filter(
    ({ code }) => !without.includes(code),
  );
  const open = said.filter(({ code }) => grave.includes(code));
  const folded = said.filter(({ code }) => !grave.includes(code));
  const drawn = ({ code, message, basis }: SaidCaution) => (
    <Caution key={`${code} ${message}`} basis={basis}>
      {message}
    </Caution>
  );
  return (
    <div className="caution-list">
      {open.map(drawn)}
      {folded.length === 0 ? null : (
        <details>
          <summary>{phrase`More usual cautions: ${[...new Set(folded.map(({ code }) => names[code] ?? code))].join(', ')}`}</summary>
          <div className="caution-list">{folded.map(drawn)}</div>
        </details>
      )}
      <p className="soft small">{phrase`The usual cautions of the trade. They defer to your local rules and to licensed practice.`}</p>
    </div>
  );
}
