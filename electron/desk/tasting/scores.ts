import { phrase } from '#core/words/phrase.ts';
import type { InputOf } from '#shared/contract/all-requests.ts';
import { Failure } from '#shared/failure.ts';
import type { Kitchen } from '#store/kitchen.ts';
import type { Reader } from '#store/reader.ts';
import { remarksOfTasting, scoresOfTasting } from '#store/rows/tastings.ts';
import type { Row } from '#store/tables.ts';
import { found } from '../found.ts';
import type { Handlers } from '../handler.ts';
import { matchScores } from './match-scores.ts';
import { scaleProblem } from './scale-problem.ts';
import { readScoreTable, scoreTableColumns } from './score-table.ts';
import { type Attribute, isNameProblem, namesOfTasting } from './tasting-names.ts';

/** Nobody reads further than this; the rest is counted. */
const mostRefused = 1000;

/** Asked before and again inside the transaction: another window may have closed it between. */
function openTasting(read: Reader, id: string): Row<'tastings'> {
  const tasting = found(read.row('tastings', id), 'tasting', 'tasting');
  if (tasting.closed_at !== null) {
    throw new Failure(
      'refused',
      phrase`“${tasting.name}” is closed: its codes have been seen, so no score can be added or changed.`,
      ['tasting'],
    );
  }
  return tasting;
}

function assertOnScale(score: number, attribute: Attribute, path: (string | number)[]): void {
  const problem = scaleProblem(attribute, score);
  if (problem !== null) throw new Failure('invalid-input', problem.message, path);
}

function named<Found extends object>(result: Found, path: (string | number)[]): Found {
  if (isNameProblem(result)) throw new Failure('invalid-input', result.message, path);
  return result;
}

interface Cell {
  readonly taster: string;
  readonly tasterName: string;
  readonly sample: string;
  readonly attribute: Attribute;
  readonly replicate: number;
  readonly score: number | null;
}

/** In a ranking a taster gives each place once. Looked at when all is written: places may be exchanged in one request. */
function assertNoTies(read: Reader, tasting: Row<'tastings'>, cells: readonly Cell[]): void {
  cells.forEach(({ taster, tasterName, sample, attribute, replicate, score }, position) => {
    if (attribute.kind !== 'place' || score === null) return;
    const twin = read.one(
      `SELECT 1 FROM scores AS c JOIN samples AS s ON s.id = c.sample_id
       WHERE c.tasting_id = ? AND c.taster_id = ? AND c.attribute_id = ? AND c.replicate = ? AND c.score = ?
         AND c.sample_id <> ? AND s.taken_out_at IS NULL LIMIT 1`,
      tasting.id,
      taster,
      attribute.id,
      replicate,
      score,
      sample,
    );
    if (twin === undefined) return;
    throw new Failure(
      'invalid-input',
      phrase`${tasterName} has given place ${score} to another sample too. Say “ties”: true where samples share a place on purpose.`,
      ['scores', position, 'score'],
    );
  });
}

function enter(kitchen: Kitchen, tasting: Row<'tastings'>, input: InputOf<'scores:enter'>) {
  const names = namesOfTasting(kitchen, tasting.id);
  const cells = input.scores.map((entry, position) => {
    const at = (member: string) => ['scores', position, member];
    const taster = named(names.taster(entry.taster), at('taster')) as { id: string; name: string };
    const sample = named(names.sample(entry.sample), at('sample')) as { id: string };
    const attribute = named(names.attribute(entry.attribute), at('attribute')) as Attribute;
    if (entry.score !== null) assertOnScale(entry.score, attribute, at('score'));
    if (entry.replicate > tasting.replicates) {
      const message =
        tasting.replicates === 1
          ? phrase`This tasting serves each sample once; replicate ${entry.replicate} is outside 1 to ${tasting.replicates}.`
          : phrase`This tasting serves each sample ${tasting.replicates} times; replicate ${entry.replicate} is outside 1 to ${tasting.replicates}.`;
      throw new Failure('invalid-input', message, at('replicate'));
    }
    return {
      taster: taster.id,
      tasterName: taster.name,
      sample: sample.id,
      attribute,
      replicate: entry.replicate,
      score: entry.score,
    };
  });
  const summary =
    cells.length === 1
      ? phrase`Enter a score in “${tasting.name}”`
      : phrase`Enter ${cells.length} scores in “${tasting.name}”`;
  return kitchen.write({ request: 'scores:enter', summary }, (writer) => {
    openTasting(writer, tasting.id);
    let entered = 0;
    let removed = 0;
    for (const cell of cells) {
      const before = writer.one<Row<'scores'>>(
        'SELECT * FROM scores WHERE sample_id = ? AND taster_id = ? AND attribute_id = ? AND replicate = ?',
        cell.sample,
        cell.taster,
        cell.attribute.id,
        cell.replicate,
      );
      if (cell.score === null) {
        if (before === undefined) continue;
        writer.remove('scores', before.id);
        removed += 1;
      } else if (before === undefined) {
        writer.insert('scores', {
          tasting_id: tasting.id,
          taster_id: cell.taster,
          sample_id: cell.sample,
          attribute_id: cell.attribute.id,
          replicate: cell.replicate,
          score: cell.score,
        });
        entered += 1;
      } else {
        if (before.score !== cell.score) writer.update('scores', before.id, { score: cell.score });
        entered += 1;
      }
    }
    if (!input.ties) assertNoTies(writer, tasting, cells);
    return { entered, removed };
  });
}

export const scoreHandlers: Handlers<
  'scores:enter' | 'scores:list' | 'scores:columns' | 'scores:import' | 'remarks:save' | 'remarks:list'
> = {
  'scores:enter': (kitchen, input) => enter(kitchen, openTasting(kitchen.read, input.tasting), input),
  'scores:list'(kitchen, { tasting }) {
    found(kitchen.read.row('tastings', tasting), 'tasting', 'tasting');
    return { scores: scoresOfTasting(kitchen.read, tasting) };
  },
  'scores:columns': (_kitchen, { table, mapping }) => scoreTableColumns(table, mapping),
  'remarks:list'(kitchen, { tasting }) {
    found(kitchen.read.row('tastings', tasting), 'tasting', 'tasting');
    return { remarks: remarksOfTasting(kitchen.read, tasting) };
  },
  'scores:import'(kitchen, input, watch) {
    const tasting = openTasting(kitchen.read, input.tasting);
    const read = readScoreTable(input.table, input.mapping);
    const { accepted, refused } = matchScores(kitchen, tasting, read, watch);
    const answer = {
      accepted: accepted.length,
      refused: refused.slice(0, mostRefused),
      ...(refused.length > mostRefused ? { refusedMore: refused.length - mostRefused } : {}),
    };
    if (input.preview || accepted.length === 0) return answer;
    const summary = phrase`Take ${accepted.length} scores into “${tasting.name}”`;
    kitchen.write({ request: 'scores:import', summary }, (writer) => {
      openTasting(writer, tasting.id);
      accepted.forEach((cell, position) => {
        if (position % 500 === 0) {
          watch.assertGoing();
          watch.progress(position, accepted.length);
        }
        writer.insert('scores', { tasting_id: tasting.id, ...cell });
      });
    });
    return answer;
  },
  'remarks:save'(kitchen, input) {
    const tasting = openTasting(kitchen.read, input.tasting);
    const names = namesOfTasting(kitchen, tasting.id);
    const taster = named(names.taster(input.taster), ['taster']) as { id: string; name: string };
    const sample = named(names.sample(input.sample), ['sample']) as { id: string; code: string };
    const summary = phrase`Note a remark`;
    return kitchen.write({ request: 'remarks:save', summary }, (writer) => {
      openTasting(writer, tasting.id);
      const before = writer.one<Row<'remarks'>>(
        'SELECT * FROM remarks WHERE sample_id = ? AND taster_id = ?',
        sample.id,
        taster.id,
      );
      if (input.words === '') {
        if (before !== undefined) writer.remove('remarks', before.id);
        return { remark: null };
      }
      const values = { tasting_id: tasting.id, taster_id: taster.id, sample_id: sample.id, words: input.words };
      const row = before === undefined ? writer.insert('remarks', values) : writer.update('remarks', before.id, values);
      return { remark: row.id };
    });
  },
};
