import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { findCulture, listCultures } from '#store/rows/cultures.ts';
import { storedMoment } from '#store/stored-moment.ts';
import { found } from '../found.ts';
import type { Handlers } from '../handler.ts';

const verbs = {
  get weighed() {
    return phrase`Weigh`;
  },
  get refreshed() {
    return phrase`Refresh`;
  },
  get 'revival-feed'() {
    return phrase`Feed, to wake it, the`;
  },
  get revived() {
    return phrase`Revived:`;
  },
} as const;

function when(kitchen: Kitchen, at: string | undefined): string {
  return at === undefined ? kitchen.now().toISOString() : storedMoment(at);
}

export const cultureHandlers: Handlers<
  'cultures:list' | 'cultures:open' | 'cultures:save' | 'cultures:log' | 'cultures:split' | 'cultures:remove'
> = {
  'cultures:list': (kitchen) => ({ cultures: listCultures(kitchen.read) }),
  'cultures:open': (kitchen, { culture }) => found(findCulture(kitchen.read, culture), 'culture', 'culture'),
  'cultures:save'(kitchen, input) {
    const { id, weight_g, refreshDays } = input;
    const before = id === undefined ? undefined : found(kitchen.read.row('cultures', id), 'culture', 'id');
    const values = {
      name: input.name,
      kind: input.kind,
      weight_g: weight_g ?? null,
      refreshed_at: input.refreshedAt === undefined ? null : storedMoment(input.refreshedAt),
      rests: input.rests ?? null,
      note: input.note ?? null,
      refresh_days: refreshDays === undefined ? (before?.refresh_days ?? null) : refreshDays,
    };
    const summary = id === undefined ? phrase`Add culture ${input.name}` : phrase`Change culture ${input.name}`;
    return kitchen.write({ request: 'cultures:save', summary }, (writer) => {
      const culture =
        id === undefined
          ? writer.insert('cultures', { ...values, parent_id: null }).id
          : writer.update('cultures', id, values, input.revision).id;
      // A weight that is told for the first time, or anew, is a point of its seasons.
      if (weight_g !== undefined && weight_g !== before?.weight_g) {
        writer.insert('culture_log', {
          culture_id: culture,
          done_at: writer.now,
          what: 'weighed',
          weight_g,
          note: null,
        });
      }
      return { culture };
    });
  },
  'cultures:log'(kitchen, { culture, what, at: given, weight_g, note }) {
    const row = found(kitchen.read.row('cultures', culture), 'culture', 'culture');
    if (what === 'weighed' && weight_g === undefined) {
      throw new Failure('invalid-input', phrase`Say what it weighs.`, ['weight_g']);
    }
    const at = when(kitchen, given);
    const isFed = what !== 'weighed';
    const isLatest = row.refreshed_at === null || at >= row.refreshed_at;
    return kitchen.write({ request: 'cultures:log', summary: phrase`${verbs[what]} culture ${row.name}` }, (writer) => {
      const entry = writer.insert('culture_log', {
        culture_id: culture,
        done_at: at,
        what,
        weight_g: weight_g ?? null,
        note: note ?? null,
      });
      const newer = writer.one(
        'SELECT id FROM culture_log WHERE culture_id = ? AND weight_g IS NOT NULL AND done_at > ?',
        culture,
        at,
      );
      const values = {
        ...(isFed && isLatest ? { refreshed_at: at } : {}),
        ...(weight_g !== undefined && newer === undefined ? { weight_g } : {}),
      };
      if (Object.keys(values).length > 0) writer.update('cultures', culture, values);
      return { entry: entry.id };
    });
  },
  'cultures:split'(kitchen, { culture, name, weight_g, at: given, rests, note }) {
    const row = found(kitchen.read.row('cultures', culture), 'culture', 'culture');
    if (row.weight_g !== null && weight_g >= row.weight_g) {
      throw new Failure(
        'refused',
        phrase`${row.name} weighs ${row.weight_g} g; a part must weigh less than the whole. Weigh it again if it has grown.`,
        ['weight_g'],
      );
    }
    const at = when(kitchen, given);
    const left_g = row.weight_g === null ? null : row.weight_g - weight_g;
    return kitchen.write({ request: 'cultures:split', summary: phrase`Split ${name} from ${row.name}` }, (writer) => {
      const part = writer.insert('cultures', {
        name,
        kind: row.kind,
        weight_g,
        refreshed_at: row.refreshed_at,
        rests: rests ?? row.rests,
        note: note ?? null,
        refresh_days: row.refresh_days,
        parent_id: culture,
      });
      const shared = { done_at: at, what: 'split', note: null };
      writer.insert('culture_log', { ...shared, culture_id: part.id, weight_g });
      writer.insert('culture_log', { ...shared, culture_id: culture, weight_g: left_g, note: name });
      if (left_g !== null) writer.update('cultures', culture, { weight_g: left_g });
      return { culture: part.id };
    });
  },
  'cultures:remove'(kitchen, { culture }) {
    const row = found(kitchen.read.row('cultures', culture), 'culture', 'culture');
    if (kitchen.read.one('SELECT id FROM bases WHERE culture_id = ? LIMIT 1', culture) !== undefined) {
      throw new Failure('refused', phrase`${row.name} has made bases that name it; it stays.`, ['culture']);
    }
    if (kitchen.read.one('SELECT id FROM cultures WHERE parent_id = ? LIMIT 1', culture) !== undefined) {
      throw new Failure('refused', phrase`Other cultures were split from ${row.name}; it stays with their lineage.`, [
        'culture',
      ]);
    }
    return kitchen.write({ request: 'cultures:remove', summary: phrase`Remove culture ${row.name}` }, (writer) => {
      writer.remove('cultures', culture);
      return { culture };
    });
  },
};
