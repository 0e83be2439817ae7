import { hoursBetween } from '#core/trial/moment.ts';
import { useRequest } from '#renderer/app/use-request.ts';
import { dayAndTime, spanWords, timeWords } from '#renderer/format/moments.ts';
import { joined } from '#renderer/format/words.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { Row, RowList } from '#renderer/parts/row-list/row-list.tsx';
import { SampleMark } from '#renderer/parts/tape/tape.tsx';
import type { DueJars } from './due-jars.ts';
import { words } from './words.ts';

function whenWords({ when, at }: DueJars, now: number): string {
  if (when === 'overdue') return words.late(spanWords(hoursBetween(at, new Date(now).toISOString())));
  return when === 'today' ? timeWords(at) : dayAndTime(at);
}

function DueRow({ due, now }: { readonly due: DueJars; readonly now: number }) {
  const labels = joined(due.jars.map(({ label }) => label));
  const isPull = due.what === 'pull';
  const pull = useRequest('jars:pull', { done: () => words.pulled(labels) });
  const start = useRequest('jars:start', { done: () => words.started(labels) });
  const act = isPull ? pull : start;
  const actWords = isPull ? words.pullButton(due.jars.length) : words.startButton(due.jars.length);
  return (
    <Row
      title={isPull ? words.pull(labels) : words.start(labels)}
      to={`/trials/${due.trial.id}`}
      marks={<SampleMark when={due.trial.isSample} />}
      facts={due.trial.question}
      end={whenWords(due, now)}
      actions={
        <Button
          weight={due.when === 'later' ? 'plain' : 'main'}
          disabled={act.isPending}
          aria-label={`${actWords}: ${labels}`}
          onClick={() => act.mutate({ jars: due.jars.map(({ id }) => id) })}
        >
          {actWords}
        </Button>
      }
    />
  );
}

interface DueListProps {
  readonly title: string;
  readonly due: readonly DueJars[];
  readonly now: number;
}

/** What is due at one time: overdue, today, or later. Empty lists are left out. */
export function DueList({ title, due, now }: DueListProps) {
  if (due.length === 0) return null;
  return (
    <section className="section">
      <h2>{title}</h2>
      <RowList label={title}>
        {due.map((one) => (
          <DueRow key={`${one.trial.id}-${one.what}-${one.at}`} due={one} now={now} />
        ))}
      </RowList>
    </section>
  );
}
