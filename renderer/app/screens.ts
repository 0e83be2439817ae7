import { phrase } from '#core/words/phrase.ts';
import type { IconName } from '#renderer/parts/icon/icon.tsx';

export interface Screen {
  readonly to: string;
  readonly name: string;
  readonly icon: IconName;
}

/** The seven screens, in the order of a day. */
export const screens: readonly Screen[] = [
  { to: '/', name: phrase`Today`, icon: 'today' },
  { to: '/trials', name: phrase`Trials`, icon: 'trials' },
  { to: '/house-recipes', name: phrase`House recipes`, icon: 'recipes' },
  { to: '/bases', name: phrase`Bases`, icon: 'bases' },
  { to: '/pantry', name: phrase`Pantry`, icon: 'pantry' },
  { to: '/tasters', name: phrase`Tasters`, icon: 'tasters' },
  { to: '/data', name: phrase`Data`, icon: 'data' },
];

/** How many of them a narrow window shows before "More". */
export const alwaysShown = 4;

/** Whether a place belongs to a screen: its own address, or one below it. */
export function isWithin(screen: Screen, place: string): boolean {
  return screen.to === '/' ? place === '/' : place === screen.to || place.startsWith(`${screen.to}/`);
}
