import { panelAnalysisSteps } from '#core/panel/analyse.ts';
import { discriminate } from '#core/panel/apart/discriminate.ts';
import type { PanelAnalysis, PanelInput } from '#core/panel/panel-analysis.ts';
import { RefusedInput } from '#core/panel/refused-input.ts';
import { designPanel } from '#core/panel/serving/panel-design.ts';
import { Failure } from '#shared/failure.ts';
import type { Computers, Watch } from '../handler.ts';

/** Data that the panel's arithmetic can't take settles as `invalid-input` at its path. */
function refusing<Result>(work: () => Result): Result {
  try {
    return work();
  } catch (error) {
    if (error instanceof RefusedInput) throw new Failure('invalid-input', error.message, error.path);
    throw error;
  }
}

/** Analyses attribute by attribute, so that whoever waits sees how far it is and can stop it. */
export function analyseWatched(input: PanelInput, watch: Watch): PanelAnalysis {
  return refusing(() => {
    const steps = panelAnalysisSteps(input);
    let step = steps.next();
    while (step.done !== true) {
      watch.assertGoing();
      watch.progress(step.value.done, step.value.of);
      step = steps.next();
    }
    return step.value;
  });
}

export const panelComputers: Computers<'panel:analyse' | 'panel:design' | 'panel:discriminate'> = {
  'panel:analyse': analyseWatched,
  'panel:design': (input) => refusing(() => designPanel(input)),
  'panel:discriminate': (input) => refusing(() => discriminate(input)),
};
