import type { ComputingName, KitchenName } from '#shared/contract/all-requests.ts';
import { baseHandlers } from './bases.ts';
import { bottleHandlers } from './bottles.ts';
import { calendarHandlers } from './calendar.ts';
import { carryingHandlers } from './carrying.ts';
import { courseHandlers } from './course.ts';
import { cultureHandlers } from './cultures.ts';
import { discriminationDesignComputers } from './discrimination-design.ts';
import { discriminationHandlers } from './discriminations.ts';
import { fermentComputers } from './ferment.ts';
import { findHandlers } from './find.ts';
import { findingHandlers } from './findings.ts';
import type { Computers, Handlers } from './handler.ts';
import { historyHandlers } from './history.ts';
import { jarHandlers } from './jars.ts';
import { kitchenHandlers } from './kitchen.ts';
import { likingFindingHandlers } from './liking-findings.ts';
import { nearKitchenHandlers } from './near-kitchens.ts';
import { panelComputers } from './panel.ts';
import { panelSightComputers } from './panel-sight.ts';
import { peopleAndPantryHandlers } from './people-and-pantry.ts';
import { photoHandlers } from './photos.ts';
import { placeFindingHandlers } from './place-findings.ts';
import { profileHandlers } from './profiles.ts';
import { readingsImportHandlers } from './readings-import.ts';
import { recipeHandlers } from './recipes.ts';
import { reportHandlers } from './report.ts';
import { scoreHandlers } from './scores.ts';
import { sheetHandlers } from './sheets.ts';
import { sightingHandlers } from './sightings.ts';
import { storeHandlers } from './store.ts';
import { tasterFindingHandlers } from './taster-findings.ts';
import { tastingHandlers } from './tastings.ts';
import { timelineHandlers } from './timeline.ts';
import { todayHandlers } from './today.ts';
import { trialHandlers } from './trials.ts';
import { wordsComputers } from './words.ts';

/** Every request that needs a kitchen has its handler here: leaving one out does not type-check. */
export const allHandlers: Handlers<KitchenName> = {
  ...kitchenHandlers,
  ...storeHandlers,
  ...historyHandlers,
  ...nearKitchenHandlers,
  ...peopleAndPantryHandlers,
  ...baseHandlers,
  ...cultureHandlers,
  ...bottleHandlers,
  ...trialHandlers,
  ...timelineHandlers,
  ...calendarHandlers,
  ...todayHandlers,
  ...jarHandlers,
  ...sightingHandlers,
  ...photoHandlers,
  ...sheetHandlers,
  ...courseHandlers,
  ...tastingHandlers,
  ...scoreHandlers,
  ...discriminationHandlers,
  ...profileHandlers,
  ...findingHandlers,
  ...placeFindingHandlers,
  ...likingFindingHandlers,
  ...tasterFindingHandlers,
  ...recipeHandlers,
  ...carryingHandlers,
  ...findHandlers,
  ...reportHandlers,
  ...readingsImportHandlers,
};

/** And every request that only computes. */
export const allComputers: Computers<ComputingName> = {
  ...panelComputers,
  ...panelSightComputers,
  ...discriminationDesignComputers,
  ...fermentComputers,
  ...wordsComputers,
};
