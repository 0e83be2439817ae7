import type { Calendar } from '#core/trial/plan-input.ts';
import type { PlannedJar } from '#core/trial/plan-trial.ts';
import { dayAndTime } from '#renderer/format/moments.ts';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { type TimeLineDay, timeLineOf } from './time-line-days.ts';
import { words } from './words.ts';

/** More days than this and only some of them are named. */
const namedDays = 8;

function classOf(place: number, step: number, startsWeek: boolean): string {
  const name = place % step !== 0 ? 'time-day is-plain' : place % (step * 2) === 0 ? 'time-day' : 'time-day is-second';
  return startsWeek ? `${name} is-week` : name;
}

function Days({ days }: { readonly days: readonly TimeLineDay[] }) {
  const step = Math.ceil(days.length / namedDays);
  return (
    <div className="time-days">
      {days.map(({ name, date, day, from, startsWeek }, place) => (
        <span
          key={date}
          className={classOf(place, step, startsWeek && place > 0)}
          style={{ insetInlineStart: `${from * 100}%`, inlineSize: `${100 / days.length}%` }}
        >
          {place % step === 0 ? (
            <span>
              <b>{name}</b> <i>{day}</i>
            </span>
          ) : null}
        </span>
      ))}
    </div>
  );
}

interface TimeLineProps {
  readonly jars: readonly PlannedJar[];
  readonly calendar: Calendar;
  readonly label: string;
}

/** The days of the jars, one line each, from start to pull; what waits before or after is drawn thin. The list in words is its twin. */
export function TimeLine({ jars, calendar, label }: TimeLineProps) {
  const line = timeLineOf(jars);
  if (line === null)
    return (
      <p className="soft small">
        <Explained words={words.timeLineEmpty} />
      </p>
    );
  const waits = calendar === 'staggered-pull' ? words.waitsCold : words.baseAges;
  return (
    <figure className="time-line">
      <figcaption className="unseen">{label}</figcaption>
      <ul className="unseen">
        {line.rows.map(({ label: jar, start, pull }) => (
          <li key={jar}>{words.whichJar(jar, dayAndTime(start), dayAndTime(pull))}</li>
        ))}
      </ul>
      <div aria-hidden="true">
        <Days days={line.days} />
        {line.rows.map(({ label: jar, level, from, to, first, last }) => (
          <div key={jar} className="time-row">
            <span className="time-name">
              <b>{jar}</b> {level}
            </span>
            <span className="time-track">
              <span
                className="time-wait"
                style={{ insetInlineStart: `${first * 100}%`, inlineSize: `${(last - first) * 100}%` }}
              />
              <span
                className="time-bar"
                style={{ insetInlineStart: `${from * 100}%`, inlineSize: `${(to - from) * 100}%` }}
              />
            </span>
          </div>
        ))}
        {line.isStaggered ? (
          <p className="time-key soft small">
            <span className="time-sample is-bar" /> {words.inJar}
            <span className="time-sample is-wait" /> {waits}
          </p>
        ) : null}
      </div>
    </figure>
  );
}
