import { type Factor, factors, factorWords } from '#core/trial/factor.ts';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { useExplainedLabel } from '#renderer/parts/term/explained-label.tsx';
import { usePlan } from './plan-context.ts';
import { PlanField } from './plan-field.tsx';
import { exampleQuestions, factorHints, words } from './words.ts';

function FactorChoice({ factor }: { readonly factor: Factor }) {
  const { draft, change } = usePlan();
  const label = useExplainedLabel<HTMLLabelElement>(factorWords[factor]);
  return (
    <label {...label.mark} className="plan-factor">
      <input
        type="radio"
        name="plan-factor"
        checked={draft.factor === factor}
        aria-describedby={label.describedBy}
        onChange={() => change((plan) => ({ ...plan, factor }))}
      />
      <span>{label.words}</span>
    </label>
  );
}

/** The question in plain words, and the one thing that moves to answer it. */
export function QuestionSection() {
  const { draft, change } = usePlan();
  return (
    <section className="plan-section">
      <h2>
        <Explained words={words.question} />
      </h2>
      <PlanField at="question" label={words.questionLabel}>
        {(wiring) => (
          <textarea
            {...wiring}
            rows={2}
            placeholder={exampleQuestions[draft.factor]}
            value={draft.question}
            onChange={({ target }) => change((plan) => ({ ...plan, question: target.value }))}
          />
        )}
      </PlanField>
      <fieldset className="plan-group">
        <legend className="field-legend">
          <Explained words={words.factor} />
        </legend>
        <div className="plan-factors">
          {factors.map((factor) => (
            <FactorChoice key={factor} factor={factor} />
          ))}
        </div>
        <p className="soft">{factorHints[draft.factor]}</p>
      </fieldset>
    </section>
  );
}
