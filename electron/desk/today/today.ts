import type { NeedKind } from '#core/trial/need.ts';
import { putOffUntil } from '#core/trial/put-off-until.ts';
import { phrase } from '#core/words/phrase.ts';
import type { InputOf } from '#shared/contract/all-requests.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { bottlesWaiting } from '#store/rows/needing.ts';
import type { Columns, TableName } from '#store/tables.ts';
import { found } from '../found.ts';
import type { Handlers } from '../handler.ts';
import { todaysNeeds } from './todays-needs.ts';

const needWords: Readonly<Record<NeedKind, (names: string) => string>> = {
  start: (names) => phrase`start ${names}`,
  look: (names) => phrase`look at ${names}`,
  stir: (names) => phrase`stir ${names}`,
  pull: (names) => phrase`pull ${names}`,
  taste: (names) => phrase`taste ${names}`,
  strain: (names) => phrase`strain ${names}`,
  feed: (names) => phrase`feed ${names}`,
};

type PutOffColumn = 'jar_id' | 'base_id' | 'culture_id' | 'tasting_id';

interface PutOff {
  readonly column: PutOffColumn;
  readonly id: string;
  readonly name: string;
}

function ownZone(): string {
  return Intl.DateTimeFormat().resolvedOptions().timeZone;
}

/** What is put off, each looked up so that a wrong id is answered at its field. */
function putOffs(kitchen: Kitchen, { jars = [], base, culture, tasting }: InputOf<'today:putOff'>): PutOff[] {
  const one = (table: TableName & ('bases' | 'cultures' | 'tastings'), id: string | undefined, column: PutOffColumn) =>
    id === undefined
      ? []
      : [{ column, id, name: found(kitchen.read.row(table, id), column.slice(0, -3), column.slice(0, -3)).name }];
  return [
    ...[...new Set(jars)].map((id) => {
      const { label } = found(kitchen.read.row('jars', id), 'jar', 'jars');
      return { column: 'jar_id' as const, id, name: phrase`jar ${label}` };
    }),
    ...one('bases', base, 'base_id'),
    ...one('cultures', culture, 'culture_id'),
    ...one('tastings', tasting, 'tasting_id'),
  ];
}

const none: Pick<Columns<'snoozes'>, PutOffColumn> = {
  jar_id: null,
  base_id: null,
  culture_id: null,
  tasting_id: null,
};

export const todayHandlers: Handlers<'today:read' | 'today:putOff' | 'today:wake'> = {
  'today:read'(kitchen, { zone = ownZone() }) {
    const now = kitchen.now().toISOString();
    return {
      now,
      zone,
      needs: todaysNeeds(kitchen.read, { now, zone }),
      bottlesWaiting: bottlesWaiting(kitchen.read),
    };
  },
  'today:putOff'(kitchen, input) {
    const subjects = putOffs(kitchen, input);
    const until = putOffUntil(input.span, kitchen.now().toISOString(), input.zone ?? ownZone());
    const names = subjects.map(({ name }) => name).join(', ');
    return kitchen.write(
      { request: 'today:putOff', summary: phrase`Put off: ${needWords[input.need](names)}` },
      (writer) => ({
        until,
        putOffs: subjects.map(({ column, id }) => {
          const before = writer.all<{ id: string }>(
            `SELECT id FROM snoozes WHERE ${column} = ? AND need = ?`,
            id,
            input.need,
          );
          for (const row of before) writer.remove('snoozes', row.id);
          return writer.insert('snoozes', {
            ...none,
            [column]: id,
            need: input.need,
            until_at: until,
            reason: input.reason ?? null,
          }).id;
        }),
      }),
    );
  },
  'today:wake'(kitchen, { putOffs }) {
    for (const id of putOffs) found(kitchen.read.row('snoozes', id), 'putting off', 'putOffs');
    return kitchen.write({ request: 'today:wake', summary: phrase`Put off no longer` }, (writer) => {
      for (const id of new Set(putOffs)) writer.remove('snoozes', id);
      return { woken: new Set(putOffs).size };
    });
  },
};
