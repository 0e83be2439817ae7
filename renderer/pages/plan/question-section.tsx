import { factors, factorWords } from '#core/trial/factor.ts';
import { usePlan } from './plan-context.ts';
import { PlanField } from './plan-field.tsx';
import { exampleQuestions, factorHints, words } from './words.ts';

/** The question in plain words, and the one thing that moves to answer it. */
export function QuestionSection() {
  const { draft, change } = usePlan();
  return (
    <section className="plan-section">
      <h2>{words.question}</h2>
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
        <legend className="field-legend">{words.factor}</legend>
        <div className="plan-factors">
          {factors.map((factor) => (
            <label key={factor} className="plan-factor">
              <input
                type="radio"
                name="plan-factor"
                checked={draft.factor === factor}
                onChange={() => change((plan) => ({ ...plan, factor }))}
              />
              <span>{factorWords[factor]}</span>
            </label>
          ))}
        </div>
        <p className="soft">{factorHints[draft.factor]}</p>
      </fieldset>
    </section>
  );
}
