import { analyseAttribute } from './analyse-attribute.ts';
import type { PanelAnalysis, PanelInput } from './panel-analysis.ts';
import { attributeColumns } from './score-columns.ts';

/**
 * What a panel's scores say, attribute by attribute, and how each taster is doing.
 *
 * Method: mixed model by restricted maximum likelihood with Satterthwaite's degrees of freedom (fitPanel), Tukey–Kramer and Dunnett
 * comparisons, Friedman's and Page's rank tests, trends over the levels (trendOf), jars within levels (jarTest), tasterForms.
 * Attributes are judged one by one: use holm on their p values when several are looked at together.
 * Scores outside their scale are left out, counted as missing and said by the reason off-scale.
 *
 * @param input scores with their names; alpha 0.05 and liking 'liking' unless given
 * @returns the analysis; what cannot be computed is null, with its reason and what would help; `path` starts at the answer's top
 * @throws RefusedInput when the same explicit replicate stands there twice
 * Accuracy: against lmerTest 2e-4 on F, 1e-3 on degrees of freedom; complete panels give the classical block F to 1e-9.
 * @example analysePanel({ scores }).attributes[0]?.test?.p
 */
export function analysePanel(input: PanelInput): PanelAnalysis {
  const steps = panelAnalysisSteps(input);
  let step = steps.next();
  while (step.done !== true) step = steps.next();
  return step.value;
}

/**
 * As analysePanel, one attribute at a time: whoever drives it can tell how far it is, and stop by not asking on.
 *
 * @returns after each attribute how many are done of how many; at the end the analysis
 */
export function* panelAnalysisSteps(input: PanelInput): Generator<{ done: number; of: number }, PanelAnalysis> {
  const answer: PanelAnalysis = { attributes: [], tasters: [] };
  const all = attributeColumns(input);
  for (const columns of all) {
    const place = { attribute: answer.attributes.length, firstTaster: answer.tasters.length };
    const { analysis, forms } = analyseAttribute(columns, input, place);
    answer.attributes.push(analysis);
    for (const form of forms) answer.tasters.push(form);
    yield { done: answer.attributes.length, of: all.length };
  }
  return answer;
}
