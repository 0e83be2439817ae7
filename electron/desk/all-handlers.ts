import type { RequestName } from '#shared/contract/all-requests.ts';
import { baseHandlers } from './bases.ts';
import { fermentHandlers } from './ferment.ts';
import { findingHandlers } from './findings.ts';
import type { Handlers } from './handler.ts';
import { jarHandlers } from './jars.ts';
import { kitchenHandlers } from './kitchen.ts';
import { panelHandlers } from './panel.ts';
import { peopleAndPantryHandlers } from './people-and-pantry.ts';
import { recipeHandlers } from './recipes.ts';
import { scoreHandlers } from './scores.ts';
import { storeHandlers } from './store.ts';
import { tastingHandlers } from './tastings.ts';
import { trialHandlers } from './trials.ts';

/** Every request of the contract has its handler here: leaving one out does not type-check. */
export const allHandlers: Handlers<RequestName> = {
  ...kitchenHandlers,
  ...storeHandlers,
  ...peopleAndPantryHandlers,
  ...baseHandlers,
  ...trialHandlers,
  ...jarHandlers,
  ...tastingHandlers,
  ...scoreHandlers,
  ...panelHandlers,
  ...fermentHandlers,
  ...findingHandlers,
  ...recipeHandlers,
};
