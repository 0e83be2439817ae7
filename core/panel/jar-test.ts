import { oneWayTest } from '#core/numeric/one-way-test.ts';
import type { JarTest } from './panel-analysis.ts';
import type { AttributeColumns } from './score-columns.ts';

/**
 * Levels against jars: whether levels differ by more than jars of the same level do.
 *
 * Method: one-way F on the means of the jars, each jar counting once. Without it a finding holds for these jars only. Where not
 * everybody tasted every jar, tasters are first brought to the same height by taking away their own mean.
 *
 * @param columns scores with jars; scores without one are left out
 * @returns the test; null when no sample has two jars, or jars of the same level never differ
 * Source: nested analysis of variance, NIST/SEMATECH e-Handbook of Statistical Methods, section 3.2.3.3.
 */
export function jarTest(columns: AttributeColumns): JarTest | null {
  const { taster, sample, score, jar } = columns;
  const jars = new Map<string, { sample: number; cells: Map<number, { sum: number; n: number }> }>();
  score.forEach((value, index) => {
    const code = jar[index] ?? -1;
    if (code < 0) return;
    const key = `${sample[index]}/${code}`;
    const entry = jars.get(key) ?? { sample: sample[index] ?? 0, cells: new Map() };
    jars.set(key, entry);
    const cell = entry.cells.get(taster[index] ?? 0) ?? { sum: 0, n: 0 };
    cell.sum += value;
    cell.n += 1;
    entry.cells.set(taster[index] ?? 0, cell);
  });
  const everybody = new Set([...jars.values()].flatMap(({ cells }) => [...cells.keys()]));
  const complete = [...jars.values()].every(({ cells }) => cells.size === everybody.size);
  const own = new Map<number, number>();
  if (!complete) {
    for (const person of everybody) {
      const means = [...jars.values()].flatMap(({ cells }) => {
        const cell = cells.get(person);
        return cell === undefined ? [] : [cell.sum / cell.n];
      });
      own.set(person, means.reduce((sum, mean) => sum + mean, 0) / means.length);
    }
  }
  const levels = new Map<number, number[]>();
  for (const entry of jars.values()) {
    let sum = 0;
    for (const [person, cell] of entry.cells) sum += cell.sum / cell.n - (own.get(person) ?? 0);
    const means = levels.get(entry.sample) ?? [];
    means.push(sum / entry.cells.size);
    levels.set(entry.sample, means);
  }
  const test = oneWayTest([...levels.values()]);
  return test === null ? null : { f: test.f, dfLevel: test.dfBetween, dfJar: test.dfWithin, p: test.p };
}
