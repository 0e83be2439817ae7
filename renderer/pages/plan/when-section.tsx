import { type Calendar, calendars } from '#core/trial/plan-input.ts';
import { planTrial } from '#core/trial/plan-trial.ts';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { usePlan } from './plan-context.ts';
import { PlanText } from './plan-field.tsx';
import { TimeLine } from './time-line.tsx';
import { calendarChoice, words } from './words.ts';

const noVolume = () => ({ volume_mL: 0, uncertain: [] });

/** When the jars stand: the start, and the two ways round that jars of different days can go. */
export function WhenSection() {
  const { draft, judged, change } = usePlan();
  const { plan } = judged;
  const jarsOf = (calendar: Calendar) => planTrial({ ...plan, calendar }, noVolume).jars;
  const days = new Set(judged.planned.formulas.flatMap((formula) => (formula === null ? [] : [formula.days])));
  const isChoice = days.size > 1;
  return (
    <section className="plan-section">
      <h2>
        <Explained words={words.when} />
      </h2>
      <div className="plan-start">
        <PlanText
          at="start"
          label={words.start}
          type="datetime-local"
          value={draft.start}
          onType={(start) => change((all) => ({ ...all, start }))}
        />
      </div>
      {isChoice ? (
        <fieldset className="plan-group">
          <legend className="field-legend">
            <Explained words={words.calendar} />
          </legend>
          <div className="plan-calendars">
            {calendars.toReversed().map((calendar) => (
              <div key={calendar} className="plan-calendar">
                <label className="plan-calendar-choice">
                  <input
                    type="radio"
                    name="plan-calendar"
                    checked={draft.calendar === calendar}
                    onChange={() => change((all) => ({ ...all, calendar }))}
                  />
                  <span>
                    <strong>{calendarChoice[calendar].title}</strong>
                    <span className="soft small">{calendarChoice[calendar].line}</span>
                  </span>
                </label>
                <TimeLine jars={jarsOf(calendar)} calendar={calendar} label={calendarChoice[calendar].title} />
              </div>
            ))}
          </div>
        </fieldset>
      ) : (
        <>
          {days.size === 1 ? (
            <p className="soft">
              <Explained words={words.sameDates} />
            </p>
          ) : null}
          <TimeLine jars={jarsOf(draft.calendar)} calendar={draft.calendar} label={words.timeLine} />
        </>
      )}
    </section>
  );
}
