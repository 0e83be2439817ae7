import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';
import type { Kitchen } from '#store/kitchen.ts';
import type { Reader } from '#store/reader.ts';
import { listBottlings } from '#store/rows/bottles.ts';
import { storedMoment } from '#store/stored-moment.ts';
import { found } from '../found.ts';
import type { Handlers } from '../handler.ts';
import { momentWords } from '../tongue/moment-words.ts';
import { bothVolumes } from './both-volumes.ts';

function when(kitchen: Kitchen, at: string | undefined): string {
  return at === undefined ? kitchen.now().toISOString() : storedMoment(at);
}

interface Source {
  readonly columns: { jar_id: string | null; batch_id: string | null };
  readonly name: string;
  readonly since: string;
  /** More than this was never in it. */
  readonly most_mL: number;
}

/** What is bottled, and since when it was there to bottle. */
function sourceOf(read: Reader, { jar, batch }: { jar?: string | undefined; batch?: string | undefined }): Source {
  if (jar !== undefined) {
    const row = found(read.row('jars', jar), 'jar', 'jar');
    if (row.started_at === null) throw new Failure('refused', phrase`Jar ${row.label} has not been started.`, ['jar']);
    if (row.discarded_at !== null) {
      throw new Failure(
        'refused',
        phrase`Jar ${row.label} was discarded (${row.discard_reason ?? ''}); don’t bottle it.`,
        ['jar'],
      );
    }
    return {
      columns: { jar_id: jar, batch_id: null },
      name: phrase`jar ${row.label}`,
      since: row.started_at,
      most_mL: found(read.row('trials', row.trial_id), 'trial', 'jar').vessel_capacity_mL,
    };
  }
  const row = found(read.row('batches', batch ?? ''), 'batch', 'batch');
  return {
    columns: { jar_id: null, batch_id: row.id },
    name: phrase`batch ${row.lot ?? row.made_at.slice(0, 10)}`,
    since: row.made_at,
    most_mL: row.volume_mL,
  };
}

/** Bottles that even with the last one all but empty would hold more than there was. */
function assertEnough({ name, most_mL }: Source, count: number, size_mL: number): void {
  if ((count - 1) * size_mL < most_mL) return;
  throw new Failure(
    'refused',
    phrase`${count} bottles of ${bothVolumes(size_mL)} hold more than ${name}, of which there were ${bothVolumes(most_mL)} at most.`,
    ['count'],
  );
}

export const bottleHandlers: Handlers<
  'bottles:list' | 'bottles:fill' | 'bottles:chill' | 'bottles:open' | 'bottles:remove'
> = {
  'bottles:list': (kitchen, input) => ({ bottlings: listBottlings(kitchen.read, input) }),
  'bottles:fill'(kitchen, input) {
    const source = sourceOf(kitchen.read, input);
    const at = when(kitchen, input.at);
    if (at < source.since) {
      throw new Failure('refused', phrase`This lies before ${source.name} was there (${source.since}).`, ['at']);
    }
    assertEnough(source, input.count, input.size_mL);
    return kitchen.write({ request: 'bottles:fill', summary: phrase`Bottle ${source.name}` }, (writer) => ({
      bottling: writer.insert('bottlings', {
        ...source.columns,
        bottled_at: at,
        count: input.count,
        size_mL: input.size_mL,
        closure: input.closure,
        rated_gauge_bar: input.ratedGauge_bar ?? null,
        lot: input.lot ?? null,
        sugar_g_per_L: input.sugar_g_per_L ?? null,
        chilled_at: null,
        note: input.note ?? null,
      }).id,
    }));
  },
  'bottles:chill'(kitchen, { bottling, at: given }) {
    const row = found(kitchen.read.row('bottlings', bottling), 'bottling', 'bottling');
    const at = when(kitchen, given);
    if (at < row.bottled_at) {
      throw new Failure('refused', phrase`This lies before they were bottled (${momentWords(row.bottled_at)}).`, [
        'at',
      ]);
    }
    return kitchen.write({ request: 'bottles:chill', summary: phrase`Chill bottles` }, (writer) => ({
      bottling: writer.update('bottlings', bottling, { chilled_at: at }).id,
    }));
  },
  'bottles:open'(kitchen, { bottling, pour, at: given, note }) {
    const row = found(kitchen.read.row('bottlings', bottling), 'bottling', 'bottling');
    const at = when(kitchen, given);
    if (at < row.bottled_at) {
      throw new Failure('refused', phrase`This lies before they were bottled (${momentWords(row.bottled_at)}).`, [
        'at',
      ]);
    }
    return kitchen.write({ request: 'bottles:open', summary: phrase`Open a bottle: ${pour}` }, (writer) => {
      const opened = writer.all('SELECT id FROM bottle_openings WHERE bottling_id = ?', bottling).length;
      if (opened >= row.count)
        throw new Failure('refused', phrase`All of these bottles are opened already.`, ['bottling']);
      const opening = writer.insert('bottle_openings', {
        bottling_id: bottling,
        opened_at: at,
        pour,
        note: note ?? null,
      });
      return { opening: opening.id, left: row.count - opened - 1 };
    });
  },
  'bottles:remove'(kitchen, { bottling }) {
    found(kitchen.read.row('bottlings', bottling), 'bottling', 'bottling');
    return kitchen.write({ request: 'bottles:remove', summary: phrase`Take out a bottling` }, (writer) => {
      writer.remove('bottlings', bottling);
      return { bottling };
    });
  },
};
