import { useKeptChoice } from '#renderer/app/use-kept-choice.ts';
import { useMeasures } from '#renderer/format/use-measures.ts';
import { gridDraft, keptLabelDraft, type LabelDraft } from './label-draft.ts';
import type { GridName } from './label-grids.ts';

/**
 * The form as it was left the last time; until it ever was, a full sheet of the kitchen's usual paper.
 *
 * @param what is printed: each kind of label has its own sheets
 */
export function useLabelDraft(
  what: 'jar labels' | 'stickers' | 'bottle labels',
  usual: GridName,
): [LabelDraft, (draft: LabelDraft) => void] {
  const { system } = useMeasures();
  const [chosen, choose] = useKeptChoice(`print ${what}`, keptLabelDraft);
  return [chosen ?? gridDraft(system === 'metric' ? 'a4' : 'letter', usual), choose];
}
