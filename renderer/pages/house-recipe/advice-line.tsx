import type { Advice } from './adjust-words.ts';
import { words } from './words.ts';

/** The answer of a small sum: the amount, or the sentence why there is none. */
export function AdviceLine({ advice }: { readonly advice: Advice | null }) {
  return (
    <p role="status" className={advice === null ? 'soft' : advice.isWorked ? 'advice' : 'field-fault'}>
      {advice === null ? words.adjust.missing : advice.words}
    </p>
  );
}
