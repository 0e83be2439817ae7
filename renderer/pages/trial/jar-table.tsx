import { pullDue } from '#core/trial/pull-due.ts';
import { phrase } from '#core/words/phrase.ts';
import { dayAndTime } from '#renderer/format/moments.ts';
import type { Measures } from '#renderer/format/use-measures.ts';
import { additionWords, jarStateWords, joined } from '#renderer/format/words.ts';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

type Trial = ValueOf<'trials:open'>;

/** The shelf's twin: each jar with what it holds and when it is due. */
export function JarTable({ trial, measures }: { readonly trial: Trial; readonly measures: Measures }) {
  const additionsOf = (level: string) =>
    trial.levelsWhole.find(({ id }) => id === level)?.formula.additions.map((one) => additionWords(one, measures)) ??
    [];
  return (
    <DataTable
      caption={words.jarTable}
      rows={trial.jarsWhole}
      rowKey={({ id }) => id}
      columns={[
        { head: phrase`Jar`, cell: ({ label }) => label },
        {
          head: phrase`Level`,
          cell: ({ levelName, isControl }) => `${levelName}${isControl ? phrase` (control)` : ''}`,
        },
        { head: phrase`Added`, cell: ({ level }) => joined(additionsOf(level)) || words.nothingAdded },
        { head: phrase`Base`, cell: ({ base_mL }) => measures.volume(base_mL), isFigure: true },
        { head: phrase`State`, cell: ({ state }) => jarStateWords[state] },
        { head: phrase`Start`, cell: ({ startedAt, plannedStart }) => dayAndTime(startedAt ?? plannedStart) },
        { head: phrase`Pull`, cell: (jar) => dayAndTime(jar.pulledAt ?? pullDue(jar)) },
      ]}
    />
  );
}
