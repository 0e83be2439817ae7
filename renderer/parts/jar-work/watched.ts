import { phrase } from '#core/words/phrase.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';

/** What readings and sightings are written down of: a jar or a base. */
export interface Watched {
  readonly owner: { readonly jar: string } | { readonly base: string };
  /** As sentences call it: "jar A", "Batch 1". */
  readonly name: string;
}

export function watchedJar({ id, label }: Pick<ValueOf<'jars:open'>['jar'], 'id' | 'label'>): Watched {
  return { owner: { jar: id }, name: phrase`jar ${label}` };
}

export function watchedBase({ id, name }: Pick<ValueOf<'bases:open'>, 'id' | 'name'>): Watched {
  return { owner: { base: id }, name };
}
