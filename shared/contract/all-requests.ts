import type { z } from 'zod';
import { baseRequests } from './bases.ts';
import { bottleRequests } from './bottles.ts';
import { carryingRequests } from './carrying.ts';
import { discriminationRequests } from './discriminations.ts';
import { fermentRequests } from './ferment.ts';
import { findRequests } from './find.ts';
import { findingRequests } from './findings.ts';
import { historyRequests } from './history.ts';
import { jarScienceRequests } from './jar-science.ts';
import { jarRequests } from './jars.ts';
import { likingFindingRequests } from './liking-findings.ts';
import { nearKitchenRequests } from './near-kitchens.ts';
import { panelRequests } from './panel.ts';
import { panelSightRequests } from './panel-sight.ts';
import { peopleAndPantryRequests } from './people-and-pantry.ts';
import { photoRequests } from './photos.ts';
import { placeFindingRequests } from './place-findings.ts';
import { profileRequests } from './profiles.ts';
import { readingsTableRequests } from './readings-table.ts';
import { recipeRequests } from './recipes.ts';
import { sightingRequests } from './sightings.ts';
import { storeRequests } from './store.ts';
import { tasterFindingRequests } from './taster-findings.ts';
import { tastingRequests } from './tastings.ts';
import { timelineRequests } from './timeline.ts';
import { todayRequests } from './today.ts';
import { trialRequests } from './trials.ts';
import { wordsRequests } from './words.ts';

/** Every request there is. Screens, hosts, scripts and tests all go by this one list. */
export const allRequests = {
  ...storeRequests,
  ...historyRequests,
  ...nearKitchenRequests,
  ...peopleAndPantryRequests,
  ...baseRequests,
  ...trialRequests,
  ...timelineRequests,
  ...jarRequests,
  ...sightingRequests,
  ...photoRequests,
  ...jarScienceRequests,
  ...tastingRequests,
  ...discriminationRequests,
  ...profileRequests,
  ...findingRequests,
  ...placeFindingRequests,
  ...likingFindingRequests,
  ...tasterFindingRequests,
  ...panelRequests,
  ...panelSightRequests,
  ...fermentRequests,
  ...recipeRequests,
  ...carryingRequests,
  ...findRequests,
  ...readingsTableRequests,
  ...todayRequests,
  ...bottleRequests,
  ...wordsRequests,
} as const;

export type RequestName = keyof typeof allRequests;

/** Requests that work without a kitchen. */
export type ComputingName = {
  [Name in RequestName]: (typeof allRequests)[Name]['needs'] extends 'nothing' ? Name : never;
}[RequestName];
export type KitchenName = Exclude<RequestName, ComputingName>;

/** What a caller writes. */
export type AskedOf<Name extends RequestName> = z.input<(typeof allRequests)[Name]['input']>;
/** What the desk works with, defaults filled in. */
export type InputOf<Name extends RequestName> = z.output<(typeof allRequests)[Name]['input']>;
export type ValueOf<Name extends RequestName> = z.output<(typeof allRequests)[Name]['output']>;

export function isRequestName(name: string): name is RequestName {
  return Object.hasOwn(allRequests, name);
}
