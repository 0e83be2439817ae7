import type { Kitchen } from '#store/kitchen.ts';
import type { Row } from '#store/tables.ts';
import type { Watch } from './handler.ts';
import { scaleProblem } from './scale-problem.ts';
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

const numeral = /^[+-]?\d+(?:[.,]\d+)?$/;

function numberIn(written: string): number | null {
  return numeral.test(written) ? Number(written.replace(',', '.')) : null;
}

interface Named {
  readonly taster: { readonly id: string; readonly name: string };
  readonly sample: { readonly id: string };
  readonly attribute: Attribute;
  readonly score: number;
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
      message: 'The score is empty. Leave the row out when a sample was missed.',
    };
  }
  const score = numberIn(written.score);
  if (score === null) {
    return {
      code: 'not-a-number',
      column: written.column,
      message: `“${written.score.slice(0, 60)}” is not a number.`,
    };
  }
  const problem = scaleProblem(attribute, score);
  if (problem !== null) return { ...problem, column: written.column };
  return { taster, sample, attribute, score };
}

/**
 * Matches a table's scores with a tasting: what can be kept, and each cell that can't with its row and reason.
 *
 * Scores without a replicate are numbered in the table's order; more than the tasting serves is refused.
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
    const message = `${attribute.message} Its ${lost === 1 ? 'one score is' : `${lost} scores are`} left out.`;
    refused.push({ row: 1, column, code: attribute.code, message });
  }
  const stored = kitchen.read.all<Row<'scores'>>('SELECT * FROM scores WHERE tasting_id = ?', tasting.id);
  const cellKey = (score: Omit<MatchedScore, 'score'>) =>
    `${score.taster_id}/${score.sample_id}/${score.attribute_id}/${score.replicate}`;
  const taken = new Map(stored.map((row) => [cellKey(row), 'stored' as 'stored' | number]));
  const counted = new Map<string, number>();
  const accepted: MatchedScore[] = [];

  table.scores.forEach((written, position) => {
    if (position % 2000 === 0) watch.assertGoing();
    if (unknownColumns.has(written.attribute)) return;
    const found = matchOne(names, written);
    if ('code' in found) {
      refused.push({ row: written.row, ...found });
      return;
    }
    const group = `${found.taster.id}/${found.sample.id}/${found.attribute.id}`;
    const next = (counted.get(group) ?? 0) + 1;
    const replicate = written.replicate === '' ? next : numberIn(written.replicate);
    if (replicate === null || !Number.isInteger(replicate) || replicate < 1 || replicate > tasting.replicates) {
      const twice = written.replicate === '' && next > tasting.replicates;
      const message = twice
        ? `${found.taster.name}’s ${found.attribute.name} of ${written.sample} stands in the table ${next} times; this tasting serves each sample ${tasting.replicates === 1 ? 'once' : `${tasting.replicates} times`}.`
        : `The replicate must be a whole number from 1 to ${tasting.replicates}; it is “${written.replicate.slice(0, 60)}”.`;
      const code = twice ? 'twice-in-table' : 'replicate-outside';
      refused.push({ row: written.row, column: twice ? written.column : 'replicate', code, message });
      return;
    }
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
          ? `${found.taster.name} has scored ${found.attribute.name} of ${written.sample} already. Take that score back first.`
          : `${found.taster.name}’s ${found.attribute.name} of ${written.sample} stands in row ${before} already.`;
      const code = before === 'stored' ? 'already-scored' : 'twice-in-table';
      refused.push({ row: written.row, column: written.column, code, message });
      return;
    }
    counted.set(group, next);
    taken.set(cellKey(cell), written.row);
    accepted.push(cell);
  });
  return { accepted, refused: refused.sort((a, b) => a.row - b.row) };
}
