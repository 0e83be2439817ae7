import type { Reason } from '#core/reason.ts';
import { phrase } from '#core/words/phrase.ts';
import { controlComparisons } from './compare/control-comparisons.ts';
import { pairComparisons } from './compare/pair-comparisons.ts';
import { dunnettOf, rangeOf } from './compare/prepared-distributions.ts';
import { sampleMeans } from './compare/sample-means.ts';
import { trendOf } from './compare/trend.ts';
import { jarTest } from './jar-test.ts';
import { attributeFit } from './model/attribute-fit.ts';
import { missingScores } from './model/missing-scores.ts';
import { estimableTerms } from './model/mixed-model.ts';
import { type Say, sayAboutModel } from './model/model-reasons.ts';
import type { AttributeAnalysis, PanelInput, RankTest, TasterForm } from './panel-analysis.ts';
import { friedman } from './ranks/friedman.ts';
import { rankBlocks } from './ranks/rank-blocks.ts';
import type { AttributeColumns } from './score-columns.ts';
import { tasterForms } from './tasters/taster-form.ts';

function rankTest(columns: AttributeColumns, blocks: number[][], say: Say): RankTest | null {
  if (columns.tasters < 2 || columns.samples < 2) {
    if (columns.tasters < 2) say(['ranks'], 'one-taster', phrase`a second taster`);
    else say(['ranks'], 'one-sample', phrase`a second sample`);
    return null;
  }
  const left = columns.tasters - blocks.length;
  if (left > 0)
    say(['ranks'], 'incomplete-panel', phrase`scores of every sample from the ${left} left out of the ranking`);
  if (blocks.length < 2) return null;
  const test = friedman(blocks);
  if (test === null) say(['ranks'], 'no-variation', phrase`a taster who does not rank all samples equal`);
  return test;
}

/**
 * Everything one attribute's scores say.
 *
 * @param columns its scores
 * @param input the request, for control, levels and alpha
 * @param place index of the attribute and of its first taster in the answer, for the reasons' paths
 */
export function analyseAttribute(
  columns: AttributeColumns,
  input: PanelInput,
  place: { readonly attribute: number; readonly firstTaster: number },
): { readonly analysis: AttributeAnalysis; readonly forms: TasterForm[] } {
  const alpha = input.alpha ?? 0.05;
  const names = columns.sampleNames;
  const path = ['attributes', place.attribute];
  const reasons: Reason[] = [];
  const say: Say = (at, code, needs) => reasons.push({ path: [...path, ...at], code, needs });
  const { cells, modelled, fit } = attributeFit(columns);
  const terms = estimableTerms(cells);
  if (columns.offScale > 0) say(['scores'], 'off-scale', phrase`${columns.offScale} left out: scores within the scale`);
  sayAboutModel(columns, fit, terms, say);
  const comparable = fit !== null && columns.samples >= 2;
  const pairs = comparable ? pairComparisons(fit.model, fit.spread, rangeOf(names.length), alpha) : null;
  const means = sampleMeans(names, cells, fit, pairs, alpha);
  for (const sample of columns.untasted) {
    say(['means', means.length], 'sample-untasted', phrase`a score of ${sample}`);
    means.push({ sample, n: 0, mean: null, low: null, high: null, letters: null });
  }

  const control = input.control === undefined ? -1 : names.indexOf(input.control);
  if (control < 0) say(['versusControl'], 'no-control', phrase`a control among the samples tasted`);
  const versus =
    comparable && control >= 0 ? controlComparisons(fit.model, fit.spread, control, dunnettOf, alpha) : null;

  const ranks = rankTest(columns, rankBlocks(cells, [...names.keys()]), say);

  const levels = names.map((name) => (Object.hasOwn(input.levels ?? {}, name) ? (input.levels?.[name] ?? null) : null));
  const isLiking = columns.attribute === (input.liking ?? 'liking');
  if (input.levels === undefined) say(['trend'], 'no-levels', phrase`the level of each sample`);
  else {
    names.forEach((name, sample) => {
      if (levels[sample] === null) say(['trend'], 'level-missing', phrase`the level of ${name}`);
    });
  }
  const ordered = input.levels !== undefined && modelled;
  const trend = ordered
    ? trendOf({ cells, levels, isLiking, alpha, path: [...path, 'trend'] })
    : { trend: null, reasons: [] };
  if (input.levels !== undefined && !modelled) say(['trend'], 'one-taster', phrase`a second taster`);
  reasons.push(...trend.reasons);

  const jars = jarTest(columns);
  if (jars === null)
    say(['jars'], 'no-repeats', phrase`scores that name their jar, and two jars or more of a level that differ`);
  const { model } = fit ?? {};
  const analysis: AttributeAnalysis = {
    attribute: columns.attribute,
    tasters: columns.tasters,
    samples: columns.samples,
    scores: columns.score.length,
    missing: missingScores(cells),
    means,
    test: fit?.test ?? null,
    variances: {
      taster: model !== undefined && terms.taster ? model.ratios.taster * model.errorVariance : null,
      tasterBySample: model?.tasterBySample ?? null,
      error: model?.pureError ?? null,
    },
    pairs: pairs?.map(({ a, b, ...rest }) => ({ a: names[a] ?? '', b: names[b] ?? '', ...rest })) ?? null,
    versusControl: versus?.map(({ sample, ...rest }) => ({ sample: names[sample] ?? '', ...rest })) ?? null,
    ranks,
    trend: trend.trend,
    jars,
    reasons,
  };
  return { analysis, forms: tasterForms(columns, cells, place.firstTaster) };
}
