import { type ComponentType, type LazyExoticComponent, lazy, type ReactNode } from 'react';

// Each screen is a part of its own: Today is drawn before the others are read, and the others come when the page has nothing else to do.

const loads: (() => Promise<unknown>)[] = [];

function later<Name extends string, Props extends object>(
  name: Name,
  load: () => Promise<Readonly<Record<Name, (props: Props) => ReactNode>>>,
): LazyExoticComponent<ComponentType<Props>> {
  loads.push(load);
  return lazy(async () => ({ default: (await load())[name] }));
}

export const BasePage = later('BasePage', () => import('#renderer/pages/base/base-page.tsx'));
export const BasesPage = later('BasesPage', () => import('#renderer/pages/bases/bases-page.tsx'));
export const BottleLabelPage = later(
  'BottleLabelPage',
  () => import('#renderer/pages/bottle-label/bottle-label-page.tsx'),
);
export const BottlesPage = later('BottlesPage', () => import('#renderer/pages/bottles/bottles-page.tsx'));
export const CulturePage = later('CulturePage', () => import('#renderer/pages/culture/culture-page.tsx'));
export const DataPage = later('DataPage', () => import('#renderer/pages/data/data-page.tsx'));
export const FindingsPage = later('FindingsPage', () => import('#renderer/pages/findings/findings-page.tsx'));
export const HistoryPage = later('HistoryPage', () => import('#renderer/pages/history/history-page.tsx'));
export const HouseRecipePage = later(
  'HouseRecipePage',
  () => import('#renderer/pages/house-recipe/house-recipe-page.tsx'),
);
export const HouseRecipesPage = later(
  'HouseRecipesPage',
  () => import('#renderer/pages/house-recipes/house-recipes-page.tsx'),
);
export const JarPage = later('JarPage', () => import('#renderer/pages/jar/jar-page.tsx'));
export const JarLabelsPage = later('JarLabelsPage', () => import('#renderer/pages/jar-labels/jar-labels-page.tsx'));
export const PantryPage = later('PantryPage', () => import('#renderer/pages/pantry/pantry-page.tsx'));
export const PenSheetsPage = later('PenSheetsPage', () => import('#renderer/pages/pen-sheets/pen-sheets-page.tsx'));
export const PhotosPage = later('PhotosPage', () => import('#renderer/pages/photos/photos-page.tsx'));
export const PlanFromBasePage = later('PlanFromBasePage', () => import('#renderer/pages/plan/plan-from-base-page.tsx'));
export const PlanAgainPage = later('PlanAgainPage', () => import('#renderer/pages/plan/plan-again-page.tsx'));
export const PlanPage = later('PlanPage', () => import('#renderer/pages/plan/plan-page.tsx'));
export const PromotePage = later('PromotePage', () => import('#renderer/pages/promote/promote-page.tsx'));
export const ReadingsImportPage = later(
  'ReadingsImportPage',
  () => import('#renderer/pages/readings-import/readings-import-page.tsx'),
);
export const SipsPage = later('SipsPage', () => import('#renderer/pages/sips/sips-page.tsx'));
export const StepPage = later('StepPage', () => import('#renderer/pages/history/step-page.tsx'));
export const StickersPage = later('StickersPage', () => import('#renderer/pages/stickers/stickers-page.tsx'));
export const BuildPage = later('BuildPage', () => import('#renderer/pages/taste/build-page.tsx'));
export const TastePage = later('TastePage', () => import('#renderer/pages/taste/taste-page.tsx'));
export const TastersPage = later('TastersPage', () => import('#renderer/pages/tasters/tasters-page.tsx'));
export const AlonePage = later('AlonePage', () => import('#renderer/pages/tasting/alone-page.tsx'));
export const ImportPage = later('ImportPage', () => import('#renderer/pages/tasting/import-page.tsx'));
export const PourPage = later('PourPage', () => import('#renderer/pages/tasting/pour-page.tsx'));
export const SheetPage = later('SheetPage', () => import('#renderer/pages/tasting/sheet-page.tsx'));
export const TastingPage = later('TastingPage', () => import('#renderer/pages/tasting/tasting-page.tsx'));
export const ApartTestPage = later('ApartTestPage', () => import('#renderer/pages/telling-apart/apart-test-page.tsx'));
export const TellingApartPage = later(
  'TellingApartPage',
  () => import('#renderer/pages/telling-apart/telling-apart-page.tsx'),
);
export const TrialPage = later('TrialPage', () => import('#renderer/pages/trial/trial-page.tsx'));
export const TrialReportPage = later(
  'TrialReportPage',
  () => import('#renderer/pages/trial-report/trial-report-page.tsx'),
);
export const TrialsPage = later('TrialsPage', () => import('#renderer/pages/trials/trials-page.tsx'));
export const WishesPage = later('WishesPage', () => import('#renderer/pages/wishes/wishes-page.tsx'));

/** Fetches the other screens ahead, one after the other, so that going there waits for nothing. */
export async function fetchScreens(): Promise<void> {
  for (const load of loads) await load().catch(() => undefined);
}
