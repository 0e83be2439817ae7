import { correlation } from '#core/numeric/correlation.ts';
import { oneWayTest } from '#core/numeric/one-way-test.ts';
import { tBothTails } from '#core/numeric/t-distribution.ts';
import type { Reason } from '#core/reason.ts';
import { phrase } from '#core/words/phrase.ts';
import type { CellTable } from '../model/cell-table.ts';
import type { TasterForm } from '../panel-analysis.ts';
import type { AttributeColumns } from '../score-columns.ts';

/** A correlation from fewer samples than this is decided by chance. */
const fewestSamples = 3;

/** Correlation of each taster's sample means with the mean of the others' on the same samples (leave one out). */
function agreements(cells: CellTable): (number | null)[] {
  const { tasters, samples, count, mean } = cells;
  const sums = new Float64Array(samples);
  const tasted = new Int32Array(samples);
  for (let cell = 0; cell < count.length; cell += 1) {
    if ((count[cell] ?? 0) === 0) continue;
    const sample = cell % samples;
    sums[sample] = (sums[sample] ?? 0) + (mean[cell] ?? 0);
    tasted[sample] = (tasted[sample] ?? 0) + 1;
  }
  return Array.from({ length: tasters }, (_, taster) => {
    const own: number[] = [];
    const others: number[] = [];
    for (let sample = 0; sample < samples; sample += 1) {
      const cell = taster * samples + sample;
      const rest = (tasted[sample] ?? 0) - 1;
      if ((count[cell] ?? 0) === 0 || rest < 1) continue;
      own.push(mean[cell] ?? 0);
      others.push(((sums[sample] ?? 0) - (mean[cell] ?? 0)) / rest);
    }
    return own.length < fewestSamples ? null : correlation(own, others);
  });
}

/**
 * How each taster is doing on one attribute: tells samples apart, repeats themselves, goes with the others.
 *
 * Method: discrimination by one-way F over the taster's own repeats; repeatability as the standard deviation of their repeats,
 * pooled over samples; agreement as the correlation of their sample means with the mean of all other tasters'. An agreement
 * significantly below zero (two-sided 5 %), or at most −0.7, is pointed out: the scale may have been turned round.
 *
 * @param columns the attribute's scores
 * @param cells the same as cells
 * @param first index of this attribute's first entry in the answer's list, for the reasons' paths
 * @returns one entry a taster
 * Source: ISO 11132:2021, Sensory analysis, monitoring the performance of a quantitative panel (from memory) for the three questions.
 */
export function tasterForms(columns: AttributeColumns, cells: CellTable, first: number): TasterForm[] {
  const scoresOf = Array.from({ length: cells.tasters * cells.samples }, (): number[] => []);
  columns.score.forEach((score, index) => {
    scoresOf[(columns.taster[index] ?? 0) * cells.samples + (columns.sample[index] ?? 0)]?.push(score);
  });
  const agreement = agreements(cells);
  return columns.tasterNames.map((name, taster) => {
    const groups = scoresOf
      .slice(taster * cells.samples, (taster + 1) * cells.samples)
      .filter((group) => group.length > 0);
    const reasons: Reason[] = [];
    const say = (at: string, code: Reason['code'], needs: string) =>
      reasons.push({ path: ['tasters', first + taster, at], code, needs });
    let squares = 0;
    for (let sample = 0; sample < cells.samples; sample += 1)
      squares += cells.inner[taster * cells.samples + sample] ?? 0;
    const df = groups.reduce((sum, group) => sum + group.length - 1, 0);
    if (df === 0) say('repeatability', 'no-repeats', phrase`a sample that this taster scored twice`);
    const test = oneWayTest(groups);
    if (test === null) {
      if (df === 0) say('discriminationP', 'no-repeats', phrase`a sample that this taster scored twice`);
      else if (groups.length < 2) say('discriminationP', 'one-sample', phrase`a second sample scored by this taster`);
      else
        say(
          'discriminationP',
          'no-variation',
          phrase`repeats that differ: without any spread there is nothing to measure against`,
        );
    }
    const r = agreement[taster] ?? null;
    if (r === null) {
      if (cells.tasters < 2) say('agreement', 'one-taster', phrase`other tasters to agree with`);
      else if (groups.length < fewestSamples)
        say('agreement', 'too-few-scores', phrase`three samples or more scored by this taster`);
      else
        say('agreement', 'no-variation', phrase`scores that differ between samples, here and among the other tasters`);
    } else if (r < 0) {
      const t = r * Math.sqrt((groups.length - 2) / Math.max(1 - r * r, 1e-15));
      if (r <= -0.7 || tBothTails(t, groups.length - 2) < 0.05) {
        say(
          'agreement',
          'scale-turned-round',
          phrase`a look at how this taster reads the scale: it may have been turned round`,
        );
      }
    }
    return {
      taster: name,
      attribute: columns.attribute,
      discriminationP: test?.p ?? null,
      repeatability: df === 0 ? null : Math.sqrt(squares / df),
      agreement: r,
      reasons,
    };
  });
}
