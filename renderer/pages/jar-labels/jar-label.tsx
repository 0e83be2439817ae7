import type { Formula, Vessel } from '#core/trial/formula.ts';
import { pullDue } from '#core/trial/pull-due.ts';
import { dayAndTime } from '#renderer/format/moments.ts';
import { useFit } from '#renderer/parts/paper/use-fit.ts';
import { QrCode } from '#renderer/parts/qr-code/qr-code.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';
import './jar-label.css';

type Trial = ValueOf<'trials:open'>;
type Jar = Trial['jarsWhole'][number];

/** Whether gas can't leave by itself; where nobody said how it is covered, a vessel with a lid counts as closed. */
export function isClosed(vessel: Vessel, cover: Formula['cover']): boolean {
  return cover === 'lid' || (cover === null && vessel.kind !== 'open-jar');
}

/** A letter with a number is set smaller than a letter: it must not touch the words beside it. */
function markSize(label: string): string | undefined {
  return label.length > 2 ? 'is-long' : label.length === 2 ? 'is-two' : undefined;
}

/** What stands on one jar. */
export function JarLabel({ trial, jar }: { readonly trial: Trial; readonly jar: Jar }) {
  const cover = trial.levelsWhole.find(({ id }) => id === jar.level)?.formula.cover ?? null;
  const { ref } = useFit(0.65);
  return (
    <div ref={ref} className="jar-label">
      <div className="jar-label-mark">
        <strong className={markSize(jar.label)}>{jar.label}</strong>
        <QrCode text={jar.id} label={words.qr(jar.label)} />
      </div>
      <div className="jar-label-words">
        <p className="jar-label-level">
          {jar.levelName}
          {jar.isControl ? ` (${words.control})` : null}
        </p>
        <p className="jar-label-question">{trial.question}</p>
        <p>{words.start(dayAndTime(jar.startedAt ?? jar.plannedStart))}</p>
        <p>
          <b>{words.pull(dayAndTime(jar.pulledAt ?? pullDue(jar)))}</b>
        </p>
        {isClosed(trial.vessel, cover) ? <p className="jar-label-caution">{words.closed}</p> : null}
      </div>
    </div>
  );
}
