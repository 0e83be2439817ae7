import { useState } from 'react';
import { fillOrder } from '#core/trial/fill-order.ts';
import { pullDue } from '#core/trial/pull-due.ts';
import { phrase } from '#core/words/phrase.ts';
import { dayAndTime } from '#renderer/format/moments.ts';
import { joined } from '#renderer/format/words.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { JarActs } from '#renderer/parts/jar-work/jar-acts.tsx';
import { type Jar, mayBeWatched } from '#renderer/parts/jar-work/next-act.ts';
import { useJarAct } from '#renderer/parts/jar-work/use-jar-act.ts';
import { actWords } from '#renderer/parts/jar-work/words.ts';
import { Row, RowList } from '#renderer/parts/row-list/row-list.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { JarNotesSheet } from './jar-notes-sheet.tsx';
import { words } from './words.ts';

function datesWords(jar: Jar): string {
  if (jar.discardedAt !== null) return words.discarded(dayAndTime(jar.discardedAt), jar.discardReason ?? '');
  if (jar.strainedAt !== null) return words.strained(dayAndTime(jar.strainedAt));
  if (jar.pulledAt !== null) return words.pulled(dayAndTime(jar.pulledAt));
  return jar.startedAt === null ? words.toStart(dayAndTime(jar.plannedStart)) : words.toPull(dayAndTime(pullDue(jar)));
}

function JarRow({ jar }: { readonly jar: Jar }) {
  const [isWriting, setIsWriting] = useState(false);
  return (
    <Row
      title={words.jarTitle(jar.label, jar.levelName)}
      to={`/jars/${jar.id}`}
      facts={
        <>
          {jar.isControl ? <span>{phrase`control`}</span> : null} <span>{datesWords(jar)}</span>
        </>
      }
      actions={
        <>
          {mayBeWatched(jar) ? (
            <Button aria-label={words.writeDownFor(jar.label)} onClick={() => setIsWriting(true)}>
              {words.writeDown}
            </Button>
          ) : null}
          <JarActs jar={jar} />
          {isWriting ? <JarNotesSheet jar={jar} onClose={() => setIsWriting(false)} /> : null}
        </>
      }
    />
  );
}

/** What to do with all jars at once, and with each. */
export function JarWorkList({ trial, now }: { readonly trial: ValueOf<'trials:open'>; readonly now: number }) {
  const { act, isBusy } = useJarAct();
  const jars = trial.jarsWhole;
  const planned = jars.filter(({ state }) => state === 'planned');
  const standing = jars.filter(({ state }) => state === 'fermenting');
  const due = standing.filter((jar) => Date.parse(pullDue(jar)) <= now);
  const order = fillOrder(
    trial.seed,
    jars.map(({ label }) => label),
  ).filter((label) => planned.some((jar) => jar.label === label));
  return (
    <div className="subsection">
      {planned.length > 1 ? <p>{words.fillOrder(order.join(', '))}</p> : null}
      <div className="button-row">
        {planned.length > 1 ? (
          <Button weight="main" disabled={isBusy} onClick={() => act('start', planned)}>
            {actWords.start.all(planned.length)}
          </Button>
        ) : null}
        {due.length > 0 ? (
          <Button weight="main" disabled={isBusy} onClick={() => act('pull', due)}>
            {words.pullDue(joined(due.map(({ label }) => label)))}
          </Button>
        ) : null}
        {standing.length > 1 && due.length < standing.length ? (
          <Button disabled={isBusy} onClick={() => act('pull', standing)}>
            {actWords.pull.all(standing.length)}
          </Button>
        ) : null}
      </div>
      <RowList label={words.jarWork}>
        {jars.map((jar) => (
          <JarRow key={jar.id} jar={jar} />
        ))}
      </RowList>
    </div>
  );
}
