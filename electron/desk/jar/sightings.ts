import { phrase } from '#core/words/phrase.ts';
import { Failure } from '#shared/failure.ts';
import type { Kitchen } from '#store/kitchen.ts';
import { bringBack, takeOut } from '#store/rows/taken-out.ts';
import type { Columns, Row } from '#store/tables.ts';
import type { Writer } from '#store/writer.ts';
import { found } from '../found.ts';
import type { Handlers } from '../handler.ts';
import { entryPlace, entryTime } from './entry-place.ts';

/** A sighting that nobody has corrected. */
export const standingSighting = { corrected_at: null, correction: null } as const satisfies Partial<
  Columns<'sightings'>
>;

/** A mould that was none takes its discarding back with it, unless mould was seen twice or the jar went for another reason. */
function backFromMould(writer: Writer, mistaken: Row<'sightings'>) {
  const none = { broughtBack: null, tastings: [], without: [] };
  if (mistaken.what !== 'mould' || mistaken.jar_id === null) return none;
  const again = writer.one(
    "SELECT id FROM sightings WHERE jar_id = ? AND what = 'mould' AND corrected_at IS NULL",
    mistaken.jar_id,
  );
  const jar = writer.row('jars', mistaken.jar_id);
  if (again !== undefined || jar === undefined || jar.discarded_at === null || jar.discard_reason !== 'mould') {
    return none;
  }
  writer.update('jars', jar.id, { discarded_at: null, discard_reason: null });
  return { broughtBack: jar.label, ...bringBack(writer, jar.id, jar.discarded_at) };
}

function placeWords(kitchen: Kitchen, { jar_id, base_id }: Row<'sightings'>): string {
  if (jar_id !== null) return phrase`jar ${kitchen.read.row('jars', jar_id)?.label ?? ''}`;
  return phrase`base ${base_id === null ? '' : (kitchen.read.row('bases', base_id)?.name ?? '')}`;
}

export const sightingHandlers: Handlers<'sightings:log' | 'sightings:correct' | 'jars:look'> = {
  'sightings:log'(kitchen, input) {
    const at = entryTime(kitchen, input.at);
    const place = entryPlace(kitchen, input, at);
    const { jar } = place;
    const discards = input.what === 'mould' && jar !== null && jar.state !== 'discarded';
    const summary = discards
      ? phrase`Mould in ${place.words}: discard it`
      : phrase`Note what was seen in ${place.words}`;
    return kitchen.write({ request: 'sightings:log', summary }, (writer) => {
      const row = writer.insert('sightings', {
        ...place.columns,
        seen_at: at,
        what: input.what,
        note: input.note ?? null,
        ...standingSighting,
      });
      if (discards) writer.update('jars', jar.id, { discarded_at: at, discard_reason: 'mould' });
      const tastings = discards ? takeOut(writer, jar.id, at, 'mould') : [];
      return { sighting: row.id, discarded: discards, tastings };
    });
  },
  'sightings:correct'(kitchen, { sighting: id, why }) {
    const row = found(kitchen.read.row('sightings', id), 'sighting', 'sighting');
    if (row.corrected_at !== null) {
      throw new Failure('refused', phrase`This sighting is corrected already.`, ['sighting']);
    }
    const summary = phrase`Correct what was seen by mistake in ${placeWords(kitchen, row)}`;
    return kitchen.write({ request: 'sightings:correct', summary }, (writer) => {
      writer.update('sightings', id, { corrected_at: writer.now, correction: why ?? null });
      return { sighting: id, ...backFromMould(writer, row) };
    });
  },
  'jars:look'(kitchen, { jars, at: given, what }) {
    const at = entryTime(kitchen, given);
    const places = [...new Set(jars)].map((jar) => entryPlace(kitchen, { jar }, at));
    for (const { jar } of places) {
      if (jar?.state === 'discarded') throw new Failure('refused', phrase`Jar ${jar.label} was discarded.`, ['jars']);
    }
    const labels = places.map(({ jar }) => jar?.label).join(', ');
    const summary =
      places.length === 1
        ? phrase`${what === 'stirred' ? phrase`Stir` : phrase`Look at`} jar ${labels}`
        : phrase`${what === 'stirred' ? phrase`Stir` : phrase`Look at`} jars ${labels}`;
    return kitchen.write({ request: 'jars:look', summary }, (writer) => ({
      sightings: places.map(
        ({ columns }) =>
          writer.insert('sightings', { ...columns, seen_at: at, what, note: null, ...standingSighting }).id,
      ),
    }));
  },
};
