import { type HeldDraft, useDraft } from '#renderer/app/use-draft.ts';
import { keptDraft, type TastingDraft } from './tasting-draft.ts';

export interface BuildDraft extends Omit<HeldDraft<TastingDraft>, 'change'> {
  readonly change: (part: Partial<TastingDraft>) => void;
}

/**
 * The half-built tasting.
 *
 * @param name the draft's own
 * @param begin what stands in the form when nothing is kept
 */
export function useBuildDraft(name: string, begin: () => TastingDraft): BuildDraft {
  const held = useDraft({
    name,
    read: keptDraft,
    begin,
    isUntouched: (draft) => JSON.stringify(draft) === JSON.stringify(begin()),
  });
  return { ...held, change: (part) => held.change((draft) => ({ ...draft, ...part })) };
}
