import { hoursBetween } from '#core/trial/moment.ts';
import { pullDue } from '#core/trial/pull-due.ts';
import { dayAndTime, spanWords } from '#renderer/format/moments.ts';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

type Jar = ValueOf<'jars:open'>['jar'];

interface Step {
  readonly name: string;
  readonly planned: string | null;
  readonly done: string | null;
}

/** Less than this between planned and done is not worth a word. */
const sameTime_h = 1;

function apartWords({ planned, done }: Step): string {
  if (planned === null || done === null) return '';
  const hours = hoursBetween(planned, done);
  return Math.abs(hours) < sameTime_h ? '' : words.apart(spanWords(Math.abs(hours)), hours > 0);
}

/** A jar that was started at another time than planned is due at another time, too. */
function openWords({ name, planned }: Step, jar: Jar): string {
  if (jar.state === 'discarded') return words.notPlanned;
  if (name !== words.steps.pull || planned === null || jar.state !== 'fermenting') return words.notYet;
  const due = pullDue(jar);
  return Math.abs(hoursBetween(planned, due)) < sameTime_h ? words.notYet : words.due(dayAndTime(due));
}

/** When each step was planned, and when it was done. */
export function JarDates({ jar }: { readonly jar: Jar }) {
  const steps: Step[] = [
    { name: words.steps.start, planned: jar.plannedStart, done: jar.startedAt },
    { name: words.steps.pull, planned: jar.plannedPull, done: jar.pulledAt },
    ...(jar.strainedAt === null ? [] : [{ name: words.steps.strain, planned: null, done: jar.strainedAt }]),
    ...(jar.discardedAt === null ? [] : [{ name: words.steps.discard, planned: null, done: jar.discardedAt }]),
  ];
  return (
    <DataTable
      caption={words.dates}
      rows={steps}
      rowKey={({ name }) => name}
      columns={[
        { head: words.step, cell: ({ name }) => name },
        { head: words.planned, cell: ({ planned }) => (planned === null ? words.notPlanned : dayAndTime(planned)) },
        { head: words.done, cell: (step) => (step.done === null ? openWords(step, jar) : dayAndTime(step.done)) },
        { head: '', cell: apartWords },
      ]}
    />
  );
}
