import { phrase } from '#core/words/phrase.ts';

/** A screen whose name is said anew each time: the menu speaks as the window that asked last. */
function screen(say: () => string, act: string): { readonly name: string; readonly act: string } {
  return {
    get name() {
      return say();
    },
    act,
  };
}

/** The seven screens, in the order of the Go menu, and where the page shows each. */
export const screens = [
  screen(() => phrase`Today`, 'go:/'),
  screen(() => phrase`Trials`, 'go:/trials'),
  screen(() => phrase`House recipes`, 'go:/house-recipes'),
  screen(() => phrase`Bases`, 'go:/bases'),
  screen(() => phrase`Pantry`, 'go:/pantry'),
  screen(() => phrase`Tasters`, 'go:/tasters'),
  screen(() => phrase`Data`, 'go:/data'),
];
