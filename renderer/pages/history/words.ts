import { phrase } from '#core/words/phrase.ts';
import type { Recorded } from './recorded.ts';

export const words = {
  title: phrase`What changed, and when`,
  lead: phrase`Everything that was ever done here, the newest first. One kitchen keeps one history: it says what and when, not who.`,
  gone: phrase`This is not known here`,
  goneLine: phrase`No such thing stands in this kitchen, nor ever did.`,
  toStart: phrase`Go to Today`,
  removed: phrase`Removed. It lay in the bin from here on.`,
  erased: phrase`Erased for good: what stood here can no longer be read.`,
  unchanged: phrase`Nothing that is shown here changed.`,
  nothing: phrase`nothing`,
  became: phrase`became`,
  another: phrase`another one`,
  yes: phrase`yes`,
  no: phrase`no`,
  undone: phrase`later undone`,
  calendars: {
    'staggered-start': phrase`started one after the other`,
    'staggered-pull': phrase`pulled one after the other`,
  },
  more: phrase`Show earlier changes`,
} as const;

interface Place {
  readonly what: (name: string) => string;
  readonly path: (id: string) => string;
}

/** The tables whose rows have a page of their own, and what they are called. */
export const places: Readonly<Partial<Record<Recorded, Place>>> = {
  jars: { what: (name) => phrase`jar ${name}`, path: (id) => `/jars/${id}` },
  trials: { what: (name) => phrase`the trial “${name}”`, path: (id) => `/trials/${id}` },
  tasters: { what: (name) => phrase`the taster ${name}`, path: () => `/tasters` },
  house_recipes: { what: (name) => phrase`the house recipe “${name}”`, path: (id) => `/house-recipes/${id}` },
  bases: { what: (name) => phrase`the base “${name}”`, path: (id) => `/bases/${id}` },
  cultures: { what: (name) => phrase`the culture “${name}”`, path: (id) => `/cultures/${id}` },
};

/** The parts of what a trial holds the same and of what goes into a jar. */
export const partNames: Readonly<Record<string, string>> = {
  additions: phrase`additions`,
  also: phrase`also`,
  'as written': phrase`as written`,
  base: phrase`base`,
  cover: phrase`cover`,
  days: phrase`days`,
  mass: phrase`mass`,
  state: phrase`state`,
  temperature: phrase`temperature`,
  volume: phrase`volume`,
};
