import type { PanelAnalysis, PanelInput } from '#core/panel/panel-analysis.ts';

const mostKept = 24;
const kept = new Map<string, unknown>();

/**
 * What was worked out of this input, taken from memory when the very same was asked lately. A work that was stopped is not kept.
 *
 * @param what tells results of one kind from those of another
 * @param work asked only for an input that is new
 */
export function remembered<Input extends object, Value>(
  what: string,
  input: Input,
  work: (input: Input) => Value,
): Value {
  const key = what + JSON.stringify(input);
  const value = (kept.has(key) ? kept.get(key) : work(input)) as Value;
  // The latest stands last; the first is the one to forget.
  kept.delete(key);
  kept.set(key, value);
  for (const old of [...kept.keys()].slice(0, -mostKept)) kept.delete(old);
  return value;
}

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
  return remembered('analysis', input, analyse);
}
