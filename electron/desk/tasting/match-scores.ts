import { phrase } from '#core/words/phrase.ts';
import type { Kitchen } from '#store/kitchen.ts';
import type { Row } from '#store/tables.ts';
import type { Watch } from '../handler.ts';
import { numberIn, readScore } from './read-score.ts';
import type { ReadTable, RefusedRow, WrittenScore } from './score-table.ts';
import { type Attribute, isNameProblem, namesOfTasting, type TastingNames } from './tasting-names.ts';

/** A score that fits the tasting, as the store keeps it. */
export interface MatchedScore {
  readonly taster_id: string;
  readonly sample_id: string;
  readonly attribute_id: string;
  readonly replicate: number;
  readonly score: number;
}

interface Named {
  readonly taster: { readonly id: string; readonly name: string };
  readonly sample: { readonly id: string };
  readonly attribute: Attribute;
  readonly score: number;
  readonly isShared: boolean;
}

function matchOne(names: TastingNames, written: WrittenScore): Named | Omit<RefusedRow, 'row'> {
  const taster = names.taster(written.taster);
  if (isNameProblem(taster)) return { ...taster, column: 'taster' };
  const sample = names.sample(written.sample);
  if (isNameProblem(sample)) return { ...sample, column: 'sample' };
  const attribute = names.attribute(written.attribute);
  if (isNameProblem(attribute)) return { ...attribute, column: written.column };
  if (written.score === '') {
    return {
      code: 'score-missing',
      column: written.column,
      message: phrase`The score is empty. Leave the row out when a sample was missed.`,
    };
  }
  const read = readScore(written.score, attribute);
  if ('code' in read) return { ...read, column: written.column };
  return { taster, sample, attribute, ...read };
}

function groupKey({ taster, sample, attribute }: Named): string {
  return `${taster.id}/${sample.id}/${attribute.id}`;
}

function firstFree(numbers: ReadonlySet<number>): number {
  let free = 1;
  while (numbers.has(free)) free += 1;
  return free;
}

/**
 * Matches a table's scores with a tasting: what can be kept, and each cell that can't with its row and reason.
 *
 * A score without a replicate takes the first one that the table leaves free, in the table's order; more than the tasting serves is
 * refused. What is stored already counts as scored, not as taken: pasting a table twice must not fill a second serving with it.
 * In a ranking a taster gives each place once, unless it is written as shared ("2=").
 */
export function matchScores(
  kitchen: Kitchen,
  tasting: Row<'tastings'>,
  table: ReadTable,
  watch: Watch,
): { accepted: MatchedScore[]; refused: RefusedRow[] } {
  const names = namesOfTasting(kitchen, tasting.id);
  const refused: RefusedRow[] = [...table.refused];
  const unknownColumns = new Set<string>();
  for (const column of table.attributeColumns) {
    const attribute = names.attribute(column);
    if (!isNameProblem(attribute)) continue;
    // Named once, at the header, not again for each of its cells.
    unknownColumns.add(column);
    const lost = table.scores.filter((written) => written.attribute === column).length;
    const message =
      lost === 1
        ? phrase`${attribute.message} Its one score is left out.`
        : phrase`${attribute.message} Its ${lost} scores are left out.`;
    refused.push({ row: 1, column, code: attribute.code, message });
  }
  const stored = kitchen.read.all<Row<'scores'>>('SELECT * FROM scores WHERE tasting_id = ?', tasting.id);
  const cellKey = (score: Omit<MatchedScore, 'score'>) =>
    `${score.taster_id}/${score.sample_id}/${score.attribute_id}/${score.replicate}`;
  const taken = new Map(stored.map((row) => [cellKey(row), 'stored' as 'stored' | number]));
  const places = new Map<string, { row: number | 'stored'; isShared: boolean }>();
  // A jar that was taken out holds no place.
  const out = new Set(
    kitchen.read
      .all<{ id: string }>('SELECT id FROM samples WHERE tasting_id = ? AND taken_out_at IS NOT NULL', tasting.id)
      .map(({ id }) => id),
  );
  for (const { taster_id, attribute_id, sample_id, score } of stored) {
    if (out.has(sample_id)) continue;
    places.set(`${taster_id}/${attribute_id}/${score}`, { row: 'stored', isShared: false });
  }
  const accepted: MatchedScore[] = [];

  const matched = table.scores.flatMap((written, position) => {
    if (position % 2000 === 0) {
      watch.assertGoing();
      watch.progress(position, table.scores.length);
    }
    if (unknownColumns.has(written.attribute)) return [];
    const found = matchOne(names, written);
    if (!('code' in found)) return [{ written, found }];
    refused.push({ row: written.row, ...found });
    return [];
  });
  // Replicates that are named anywhere in the table are not given to a row without one.
  const named = new Map<string, Set<number>>();
  for (const { written, found } of matched) {
    const replicate = numberIn(written.replicate);
    if (replicate === null) continue;
    named.set(groupKey(found), (named.get(groupKey(found)) ?? new Set()).add(replicate));
  }
  for (const { written, found } of matched) {
    const group = groupKey(found);
    const isBlank = written.replicate === '';
    const inTable = named.get(group) ?? new Set<number>();
    const replicate = isBlank ? firstFree(inTable) : numberIn(written.replicate);
    if (replicate === null || !Number.isInteger(replicate) || replicate < 1 || replicate > tasting.replicates) {
      const message = isBlank
        ? tasting.replicates === 1
          ? phrase`${found.taster.name}’s ${found.attribute.name} of ${written.sample} stands in the table more often than it is served: once.`
          : phrase`${found.taster.name}’s ${found.attribute.name} of ${written.sample} stands in the table more often than it is served: ${tasting.replicates} times.`
        : phrase`The replicate must be a whole number from 1 to ${tasting.replicates}; it is “${written.replicate.slice(0, 60)}”.`;
      const code = isBlank ? 'twice-in-table' : 'replicate-outside';
      refused.push({ row: written.row, column: isBlank ? written.column : 'replicate', code, message });
      continue;
    }
    if (isBlank) named.set(group, inTable.add(replicate));
    const cell = {
      taster_id: found.taster.id,
      sample_id: found.sample.id,
      attribute_id: found.attribute.id,
      replicate,
      score: found.score,
    };
    const before = taken.get(cellKey(cell));
    if (before !== undefined) {
      const message =
        before === 'stored'
          ? phrase`${found.taster.name} has scored ${found.attribute.name} of ${written.sample} already. Take that score back first.`
          : phrase`${found.taster.name}’s ${found.attribute.name} of ${written.sample} stands in row ${before} already.`;
      const code = before === 'stored' ? 'already-scored' : 'twice-in-table';
      refused.push({ row: written.row, column: written.column, code, message });
      continue;
    }
    if (found.attribute.kind === 'place') {
      const key = `${cell.taster_id}/${cell.attribute_id}/${cell.score}`;
      const other = places.get(key);
      if (other !== undefined && !other.isShared && !found.isShared) {
        const where = other.row === 'stored' ? phrase`to another sample already` : phrase`in row ${other.row} already`;
        const message = phrase`${found.taster.name} has given place ${cell.score} ${where}. Write ${cell.score}= where two samples share it on purpose.`;
        refused.push({ row: written.row, column: written.column, code: 'place-twice', message });
        continue;
      }
      if (other === undefined) places.set(key, { row: written.row, isShared: found.isShared });
    }
    taken.set(cellKey(cell), written.row);
    accepted.push(cell);
  }
  return { accepted, refused: refused.sort((a, b) => a.row - b.row) };
}
