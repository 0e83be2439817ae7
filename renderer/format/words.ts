import type { Addition, AdditionState, Cover, VesselKind } from '#core/trial/formula.ts';
import { ingredientName } from '#core/trial/formula.ts';
import { shownNumber } from '#core/words/figures.ts';
import { phrase } from '#core/words/phrase.ts';
import type { ingredientKinds } from '#shared/contract/people-and-pantry.ts';
import { counted } from './counted.ts';
import type { Measures } from './use-measures.ts';

// Trade words that several screens say.

const trialStates = {
  planned: phrase`planned`,
  fermenting: phrase`fermenting`,
  pulled: phrase`pulled`,
  closed: phrase`tasted and closed`,
} as const;

/** How a trial stands: its state, and how often it was set before a panel. */
export function trialStateWords({ state, tastings }: { state: keyof typeof trialStates; tastings: number }): string {
  if (state === 'closed' || tastings === 0)
    return state === 'pulled' ? phrase`pulled, ready to taste` : trialStates[state];
  return `${trialStates[state]}, ${counted(tastings, 'tasting')}`;
}

export const jarStateWords = {
  planned: phrase`planned`,
  fermenting: phrase`fermenting`,
  pulled: phrase`pulled`,
  strained: phrase`strained`,
  discarded: phrase`discarded`,
} as const;

export const stateWords: Readonly<Record<AdditionState, string>> = {
  fresh: phrase`fresh`,
  frozen: phrase`frozen`,
  liquid: phrase`liquid`,
};

export const coverWords: Readonly<Record<Cover, string>> = {
  cloth: phrase`under cloth`,
  airlock: phrase`under an airlock`,
  lid: phrase`under a lid`,
};

export const vesselWords: Readonly<Record<VesselKind, string>> = {
  'open-jar': phrase`open jar`,
  'lidded-jar': phrase`lidded jar`,
  'swing-top': phrase`swing-top bottle`,
  crown: phrase`crown-capped bottle`,
  plastic: phrase`plastic bottle`,
};

export const ingredientKindWords: Readonly<Record<(typeof ingredientKinds)[number], string>> = {
  fruit: phrase`Fruit`,
  vegetable: phrase`Vegetables`,
  juice: phrase`Juice`,
  herb: phrase`Herbs`,
  root: phrase`Roots`,
  spice: phrase`Spices`,
  sweetener: phrase`Sweeteners`,
  tea: phrase`Tea`,
  grain: phrase`Grain`,
  other: phrase`Other`,
};

export const basisWords = {
  panel: phrase`decided by a panel`,
  sips: phrase`decided by the maker’s own sips`,
  none: phrase`written down without a tasting`,
} as const;

/** @example daysWords(2.5) // '2.5 days' */
export function daysWords(days: number): string {
  return `${shownNumber(Number(days.toFixed(2)))} ${days === 1 ? phrase`day` : phrase`days`}`;
}

/** @example joined(['a', 'b', 'c']) // 'a, b and c' */
export function joined(words: readonly string[]): string {
  return words.length < 2 ? (words[0] ?? '') : phrase`${words.slice(0, -1).join(', ')} and ${words.at(-1) ?? ''}`;
}

/** "75 g raspberries, frozen": the state is left out where the name says it. */
export function additionWords(addition: Addition, measures: Measures): string {
  const name = ingredientName(addition.ingredient);
  const state = name.includes(addition.state) || addition.state === 'liquid' ? '' : `, ${stateWords[addition.state]}`;
  const written = addition.asWritten === undefined ? '' : ` (${addition.asWritten})`;
  return `${measures.mass(addition.mass_g)} ${name}${state}${written}`;
}

/** First letter up, for a sentence's head. */
export function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
