import { analysePanel } from '#core/panel/analyse.ts';
import type { PanelAnalysis, PanelInput } from '#core/panel/panel-analysis.ts';

const mostKept = 8;
const kept = new Map<string, PanelAnalysis>();

/**
 * The analysis of these scores, taken from memory when the very same was asked lately: a screen is read again after every change in the
 * kitchen, and most changes are elsewhere.
 */
export function rememberedAnalysis(input: PanelInput): PanelAnalysis {
  const key = JSON.stringify(input);
  const analysis = kept.get(key) ?? analysePanel(input);
  // The latest stands last; the first is the one to forget.
  kept.delete(key);
  kept.set(key, analysis);
  for (const old of [...kept.keys()].slice(0, -mostKept)) kept.delete(old);
  return analysis;
}
