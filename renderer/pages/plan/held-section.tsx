import { Button } from '#renderer/parts/button/button.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { AdditionRows } from './addition-rows.tsx';
import { addAlso, changeHeld } from './change-plan.ts';
import { coverOptions } from './level-card.tsx';
import { usePlan } from './plan-context.ts';
import type { AlsoDraft } from './plan-draft.ts';
import { PlanChoice, PlanGroup, PlanText } from './plan-field.tsx';
import { isBlank } from './read-addition.ts';
import { words } from './words.ts';

function AlsoHeld() {
  const { draft, change } = usePlan();
  const { also } = draft.held;
  const set = (place: number, values: Partial<AlsoDraft> | null) =>
    change((plan) => {
      const rows =
        values === null
          ? plan.held.also.filter((_, at) => at !== place)
          : plan.held.also.map((row, at) => (at === place ? { ...row, ...values } : row));
      return changeHeld({ also: rows })(plan);
    });
  return (
    <PlanGroup at="held.also" legend={words.also}>
      {also.length === 0 ? null : (
        <ul className="plan-also">
          {also.map((row, place) => (
            <li key={row.key} className="plan-also-row">
              <PlanText
                at={`held.also.${place}.name`}
                label={words.alsoName}
                placeholder={words.alsoIdeas[place % words.alsoIdeas.length] ?? ''}
                value={row.name}
                onType={(name) => set(place, { name })}
              />
              <PlanText
                at={`held.also.${place}.value`}
                label={words.alsoValue}
                value={row.value}
                onType={(value) => set(place, { value })}
              />
              <Button
                weight="quiet"
                className="plan-take-out"
                aria-label={words.removeAlso(row.name)}
                onClick={() => set(place, null)}
              >
                ×
              </Button>
            </li>
          ))}
        </ul>
      )}
      <div>
        <Button weight="quiet" onClick={() => change(addAlso())}>
          {words.addAlso}
        </Button>
      </div>
    </PlanGroup>
  );
}

/** What every jar shares; what moves is not asked here. */
export function HeldSection() {
  const { draft, change } = usePlan();
  const { held, factor } = draft;
  const isShare = factor === 'amount' && held.additions.filter((row) => !isBlank(row)).length <= 1;
  const legend =
    factor === 'amount' ? words.additionsAmount : factor === 'state' ? words.additionsState : words.additions;
  return (
    <section className="plan-section">
      <h2>
        <Explained words={words.held} />
      </h2>
      <p className="soft">
        <Explained words={factor === 'formula' ? words.heldFormula : words.heldLead} />
      </p>
      {factor === 'formula' ? null : (
        <PlanGroup at="held.additions" legend={legend}>
          {factor === 'amount' ? (
            <p className="soft small">
              <Explained words={words.additionsAmountHint} />
            </p>
          ) : null}
          <AdditionRows
            at="held.additions"
            rows={held.additions}
            isShare={isShare}
            isStateMoved={factor === 'state'}
            onChange={(additions) => change(changeHeld({ additions }))}
          />
        </PlanGroup>
      )}
      <div className="field-grid">
        {factor === 'days' ? null : (
          <PlanText
            at="held.days"
            label={words.days}
            hint={words.daysHint}
            value={held.days}
            onType={(days) => change(changeHeld({ days }))}
          />
        )}
        {factor === 'cover' ? null : (
          <PlanChoice
            at="held.cover"
            label={words.cover}
            value={held.cover}
            options={coverOptions}
            onChoose={(cover) => change(changeHeld({ cover }))}
          />
        )}
        {factor === 'temperature' ? null : (
          <PlanText
            at="held.temperature_C"
            label={words.temperature}
            hint={words.temperatureHint[draft.measures]}
            value={held.temperature}
            onType={(temperature) => change(changeHeld({ temperature }))}
          />
        )}
      </div>
      <AlsoHeld />
    </section>
  );
}
