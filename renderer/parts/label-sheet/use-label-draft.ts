import { useState } from 'react';
import { useMeasures } from '#renderer/format/use-measures.ts';
import { gridDraft, type LabelDraft } from './label-draft.ts';
import type { GridName } from './label-grids.ts';

/** The form as typed; until something is, a full sheet of the kitchen's usual paper. */
export function useLabelDraft(usual: GridName): [LabelDraft, (draft: LabelDraft) => void] {
  const { system } = useMeasures();
  const [typed, setTyped] = useState<LabelDraft | null>(null);
  return [typed ?? gridDraft(system === 'metric' ? 'a4' : 'letter', usual), setTyped];
}
