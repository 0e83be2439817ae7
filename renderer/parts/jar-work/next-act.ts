import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { JarAct } from './words.ts';

export type Jar = ValueOf<'jars:open'>['jar'];

/** What mostly comes next for a jar; null when it is done with. */
export function nextAct({ state }: Pick<Jar, 'state'>): JarAct | null {
  if (state === 'planned') return 'start';
  if (state === 'fermenting') return 'pull';
  return state === 'pulled' ? 'strain' : null;
}

/** All that can be done with a jar now, the likeliest first. A standing jar may be strained without being pulled. */
export function actsOf({ state }: Pick<Jar, 'state'>): readonly JarAct[] {
  if (state === 'planned') return ['start'];
  if (state === 'fermenting') return ['pull', 'strain'];
  return state === 'pulled' ? ['strain'] : [];
}

/** Whether readings and sightings can be written down: it has stood, and is still there. */
export function mayBeWatched({ state }: Pick<Jar, 'state'>): boolean {
  return state !== 'planned' && state !== 'discarded';
}
