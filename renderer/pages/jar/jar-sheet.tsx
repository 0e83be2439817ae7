import { Link } from 'wouter';
import type { Vessel } from '#core/trial/formula.ts';
import type { MeasureSystem } from '#core/units/format-quantity.ts';
import { glued } from '#renderer/format/glued.ts';
import { typedStrength } from '#renderer/format/typed-amount.ts';
import type { Measures } from '#renderer/format/use-measures.ts';
import { AmountField } from '#renderer/parts/amount-field/amount-field.tsx';
import { type Amount, useAmount } from '#renderer/parts/amount-field/use-amount.ts';
import { Facts } from '#renderer/parts/facts/facts.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { bottledFacts, bottledSentence } from './bottled-words.ts';
import { reckoningOf } from './reckoning.ts';
import {
  alcoholFacts,
  alcoholSentence,
  closingFacts,
  closingSentence,
  coldBasis,
  coldSentence,
  type JarScience,
  sheetLack,
  sheetSentence,
  sugarFacts,
} from './sheet-words.ts';
import { words } from './words.ts';

interface SheetProps {
  readonly science: JarScience;
  readonly measures: Measures;
}

function Lack({ science }: { readonly science: JarScience }) {
  const lack = sheetLack(science);
  if (lack === null) return null;
  return (
    <p className="jar-lack">
      {lack.words} <Link href={lack.to}>{lack.link}</Link>
    </p>
  );
}

/** The sugar asked about, as typed. */
export function useClosingQuestion(system: MeasureSystem): Amount {
  return useAmount('', (text) => typedStrength(text, system));
}

interface ClosingProps extends SheetProps {
  readonly vessel: Vessel;
  /** What closing it with that much sugar would do. */
  readonly question: Amount;
}

/** In bottles already: what was noted at closing, not what the plan says of the jar. */
function Bottled({ science, measures }: SheetProps) {
  const { bottled } = science;
  if (bottled === null) return null;
  return (
    <div className="subsection">
      <h3>
        <Explained words={words.bottled} />
      </h3>
      <p className="jar-sentence">
        <Explained words={bottledSentence(bottled, measures)} />
      </p>
      <Facts facts={bottledFacts(bottled, measures)} />
    </div>
  );
}

/** Closed or about to be: how much gas and pressure at most, against what the vessel is made for. */
function Closing({ science, measures, vessel, question }: ClosingProps) {
  const rated_bar = vessel.ratedGauge_bar;
  const isReckoned = science.closing !== null || science.isClosed;
  return (
    <div className="subsection">
      <h3>
        <Explained words={science.isClosed ? words.closed : words.ifClosed} />
      </h3>
      {isReckoned ? (
        <p className="jar-sentence">
          <Explained words={closingSentence(science, rated_bar, measures)} />
        </p>
      ) : (
        <p className="soft">
          <Explained words={vessel.kind === 'open-jar' ? words.openJar : words.open} />
        </p>
      )}
      <Facts facts={closingFacts(science, rated_bar, measures)} />
      {vessel.kind === 'open-jar' ? null : (
        <div className="wanted-sweetness no-print">
          <AmountField
            label={words.closingSugar}
            hint={words.closingHint[measures.system]}
            amount={question}
            shown={measures.sugar}
          />
        </div>
      )}
    </div>
  );
}

function ColdStart({ science, measures }: SheetProps) {
  const sentence = coldSentence(science, measures);
  if (sentence === null) return null;
  return (
    <div className="subsection">
      <h3>
        <Explained words={words.cold} />
      </h3>
      <p className="jar-sentence">{glued(sentence)}</p>
      <p className="soft small">{glued(coldBasis(science, measures))}</p>
    </div>
  );
}

/** What one jar holds and may become: a sentence first, then the figures with their doubt, then how they are reckoned. */
export function JarSheet({ science, measures, vessel, question }: ClosingProps) {
  const { sheet, problem } = science;
  return (
    <section className="section" aria-label={words.sheet}>
      <h2>
        <Explained words={words.sheet} />
      </h2>
      {sheet === null ? (
        <p className="jar-sentence">{problem}</p>
      ) : (
        <>
          <p className="jar-sentence">{glued(sheetSentence(science, measures) ?? '')}</p>
          <Lack science={science} />
          <Facts facts={sugarFacts({ sheet }, measures)} />
          <div className="subsection">
            <h3>
              <Explained words={words.alcohol} />
            </h3>
            <p className="jar-sentence">{glued(alcoholSentence(science))}</p>
            <Facts facts={alcoholFacts({ sheet, base: science.base }, measures)} />
          </div>
        </>
      )}
      <Bottled science={science} measures={measures} />
      {science.bottled !== null && question.text === '' && vessel.kind === 'open-jar' ? null : (
        <Closing science={science} measures={measures} vessel={vessel} question={question} />
      )}
      <ColdStart science={science} measures={measures} />
      {sheet === null ? null : (
        <details>
          <summary>{words.reckoned}</summary>
          <dl className="jar-reckoning">
            {reckoningOf(science, measures).map(({ what, basis }) => (
              <div key={what}>
                <dt>{glued(what)}</dt>
                <dd className="soft small">{glued(basis)}</dd>
              </div>
            ))}
          </dl>
        </details>
      )}
    </section>
  );
}
