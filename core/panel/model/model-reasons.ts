import type { Reason } from '#core/reason.ts';
import { phrase } from '#core/words/phrase.ts';
import type { AttributeColumns } from '../score-columns.ts';
import type { PanelFit } from './fit-panel.ts';

/** Adds a reason at a place inside one attribute's answer. */
export type Say = (at: readonly (string | number)[], code: Reason['code'], needs: string) => void;

/** A model of more samples would take longer than anyone waits. */
export const mostSamples = 500;

/**
 * Says what the mixed model could not tell and why.
 *
 * @param terms which variances the scores can tell apart
 */
export function sayAboutModel(
  columns: AttributeColumns,
  fit: PanelFit | null,
  terms: { taster: boolean; interaction: boolean },
  say: Say,
) {
  if (columns.tasters < 2) {
    for (const at of ['test', 'variances', 'pairs'])
      say([at], 'one-taster', phrase`a second taster: one alone speaks for nobody else`);
    return;
  }
  if (columns.samples > mostSamples) {
    say(['test'], 'too-many-samples', phrase`at most ${mostSamples} samples in one attribute`);
    return;
  }
  if (columns.samples < 2)
    for (const at of ['test', 'pairs']) say([at], 'one-sample', phrase`a second sample to compare with`);
  if (fit === null) {
    const few = columns.score.length <= columns.samples;
    const needs = few
      ? phrase`more scores than samples`
      : phrase`scores that differ by more than taster and sample explain`;
    for (const at of ['test', 'variances', 'pairs']) say([at], few ? 'too-few-scores' : 'no-variation', needs);
    return;
  }
  if (!terms.taster) say(['variances', 'taster'], 'too-few-scores', phrase`tasters who score more than once`);
  else if (fit.model.ratios.taster === 0) {
    say(
      ['variances', 'taster'],
      'taster-variance-zero',
      phrase`nothing: tasters differ no more than chance, and the test leaves them out`,
    );
  }
  if (!terms.interaction)
    say(['variances', 'tasterBySample'], 'no-repeats', phrase`tasters who score the same sample twice`);
  else if (fit.model.tasterBySample === 0) {
    const needs = phrase`nothing: tasters see the same differences as far as chance tells, and the test is the pooled one`;
    say(['variances', 'tasterBySample'], 'interaction-variance-zero', needs);
  }
}
