import { analysePanel } from '#core/panel/analyse.ts';
import { discriminate } from '#core/panel/discriminate.ts';
import { designPanel } from '#core/panel/panel-design.ts';
import { RefusedInput } from '#core/panel/refused-input.ts';
import { Failure } from '#shared/failure.ts';
import type { Handlers } from './handler.ts';

/** Data that the panel's arithmetic can't take settles as `invalid-input` at its path. */
function refusing<Result>(work: () => Result): Result {
  try {
    return work();
  } catch (error) {
    if (error instanceof RefusedInput) throw new Failure('invalid-input', error.message, error.path);
    throw error;
  }
}

export const panelHandlers: Handlers<'panel:analyse' | 'panel:design' | 'panel:discriminate'> = {
  'panel:analyse': (_kitchen, input) => refusing(() => analysePanel(input)),
  'panel:design': (_kitchen, input) => refusing(() => designPanel(input)),
  'panel:discriminate': (_kitchen, input) => refusing(() => discriminate(input)),
};
