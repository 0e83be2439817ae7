import type { Addition, AdditionState, Cover, VesselKind } from '#core/trial/formula.ts';
import { ingredientName } from '#core/trial/formula.ts';
import type { ingredientKinds } from '#shared/contract/people-and-pantry.ts';
import type { Measures } from './use-measures.ts';

// Trade words that several screens say.

const trialStates = {
  planned: 'planned',
  fermenting: 'fermenting',
  pulled: 'pulled',
  closed: 'tasted and closed',
} as const;

/** How a trial stands: its state, and how often it was set before a panel. */
export function trialStateWords({ state, tastings }: { state: keyof typeof trialStates; tastings: number }): string {
  if (state === 'closed' || tastings === 0) return state === 'pulled' ? 'pulled, ready to taste' : trialStates[state];
  return `${trialStates[state]}, ${counted(tastings, 'tasting')}`;
}

export const jarStateWords = {
  planned: 'planned',
  fermenting: 'fermenting',
  pulled: 'pulled',
  strained: 'strained',
  discarded: 'discarded',
} as const;

export const stateWords: Readonly<Record<AdditionState, string>> = {
  fresh: 'fresh',
  frozen: 'frozen',
  liquid: 'liquid',
};

export const coverWords: Readonly<Record<Cover, string>> = {
  cloth: 'under cloth',
  airlock: 'under an airlock',
  lid: 'under a lid',
};

export const vesselWords: Readonly<Record<VesselKind, string>> = {
  'open-jar': 'open jar',
  'lidded-jar': 'lidded jar',
  'swing-top': 'swing-top bottle',
  crown: 'crown-capped bottle',
  plastic: 'plastic bottle',
};

export const ingredientKindWords: Readonly<Record<(typeof ingredientKinds)[number], string>> = {
  fruit: 'Fruit',
  vegetable: 'Vegetables',
  juice: 'Juice',
  herb: 'Herbs',
  root: 'Roots',
  spice: 'Spices',
  sweetener: 'Sweeteners',
  tea: 'Tea',
  grain: 'Grain',
  other: 'Other',
};

export const basisWords = {
  panel: 'decided by a panel',
  sips: 'decided by the maker’s own sips',
  none: 'written down without a tasting',
} as const;

/** @example counted(3, 'jar') // '3 jars' */
export function counted(count: number, word: string, many = `${word}s`): string {
  return `${count.toLocaleString('en')} ${count === 1 ? word : many}`;
}

/** @example daysWords(2.5) // '2.5 days' */
export function daysWords(days: number): string {
  return `${Number(days.toFixed(2))} ${days === 1 ? 'day' : 'days'}`;
}

/** @example joined(['a', 'b', 'c']) // 'a, b and c' */
export function joined(words: readonly string[]): string {
  return words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
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
