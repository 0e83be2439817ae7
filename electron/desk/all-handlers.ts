import type { ComputingName, KitchenName } from '#shared/contract/all-requests.ts';
import { baseHandlers } from './cellar/bases.ts';
import { bottleHandlers } from './cellar/bottles.ts';
import { cultureHandlers } from './cellar/cultures.ts';
import { findingHandlers } from './findings/findings.ts';
import { likingFindingHandlers } from './findings/liking-findings.ts';
import { placeFindingHandlers } from './findings/place-findings.ts';
import { tasterFindingHandlers } from './findings/taster-findings.ts';
import type { Computers, Handlers } from './handler.ts';
import { courseHandlers } from './jar/course.ts';
import { jarHandlers } from './jar/jars.ts';
import { photoHandlers } from './jar/photos.ts';
import { readingsImportHandlers } from './jar/readings-import.ts';
import { sheetHandlers } from './jar/sheets.ts';
import { sightingHandlers } from './jar/sightings.ts';
import { carryingHandlers } from './kitchen/carrying.ts';
import { findHandlers } from './kitchen/find.ts';
import { historyHandlers } from './kitchen/history.ts';
import { kitchenHandlers } from './kitchen/kitchen.ts';
import { nearKitchenHandlers } from './kitchen/near-kitchens.ts';
import { reportHandlers } from './kitchen/report.ts';
import { storeHandlers } from './kitchen/store.ts';
import { fermentComputers } from './pantry/ferment.ts';
import { peopleAndPantryHandlers } from './pantry/people-and-pantry.ts';
import { recipeHandlers } from './recipe/recipes.ts';
import { discriminationDesignComputers } from './tasting/discrimination-design.ts';
import { discriminationHandlers } from './tasting/discriminations.ts';
import { panelComputers } from './tasting/panel.ts';
import { panelSightComputers } from './tasting/panel-sight.ts';
import { profileHandlers } from './tasting/profiles.ts';
import { scoreHandlers } from './tasting/scores.ts';
import { tastingHandlers } from './tasting/tastings.ts';
import { todayHandlers } from './today/today.ts';
import { wordsComputers } from './tongue/words.ts';
import { calendarHandlers } from './trial/calendar.ts';
import { timelineHandlers } from './trial/timeline.ts';
import { trialHandlers } from './trial/trials.ts';

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
