import { phrase } from '#core/words/phrase.ts';

/** The seven screens, in the order of the Go menu, and where the page shows each. */
export const screens = [
  {
    get name() {
      return phrase`Today`;
    },
    act: 'go:/',
  },
  {
    get name() {
      return phrase`Trials`;
    },
    act: 'go:/trials',
  },
  {
    get name() {
      return phrase`House recipes`;
    },
    act: 'go:/house-recipes',
  },
  {
    get name() {
      return phrase`Bases`;
    },
    act: 'go:/bases',
  },
  {
    get name() {
      return phrase`Pantry`;
    },
    act: 'go:/pantry',
  },
  {
    get name() {
      return phrase`Tasters`;
    },
    act: 'go:/tasters',
  },
  {
    get name() {
      return phrase`Data`;
    },
    act: 'go:/data',
  },
] as const;
