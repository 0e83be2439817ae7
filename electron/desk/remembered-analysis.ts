import type { PanelAnalysis, PanelInput } from '#core/panel/panel-analysis.ts';

const mostKept = 24;
const kept = new Map<string, PanelAnalysis>();

/**
 * The analysis of these scores, taken from memory when the very same was asked lately: a screen is read again after every change in the
 * kitchen, and most changes are elsewhere. One that was stopped is not kept.
 *
 * @param analyse asked only for scores that are new
 */
export function rememberedAnalysis<Input extends PanelInput>(
  input: Input,
  analyse: (input: Input) => PanelAnalysis,
): PanelAnalysis {
  const key = JSON.stringify(input);
  const analysis = kept.get(key) ?? analyse(input);
  // The latest stands last; the first is the one to forget.
  kept.delete(key);
  kept.set(key, analysis);
  for (const old of [...kept.keys()].slice(0, -mostKept)) kept.delete(old);
  return analysis;
}
