import { Route, Switch } from 'wouter';
import { BasePage } from '#renderer/pages/base/base-page.tsx';
import { BasesPage } from '#renderer/pages/bases/bases-page.tsx';
import { BottleLabelPage } from '#renderer/pages/bottle-label/bottle-label-page.tsx';
import { BottlesPage } from '#renderer/pages/bottles/bottles-page.tsx';
import { CulturePage } from '#renderer/pages/culture/culture-page.tsx';
import { DataPage } from '#renderer/pages/data/data-page.tsx';
import { FindingsPage } from '#renderer/pages/findings/findings-page.tsx';
import { HouseRecipePage } from '#renderer/pages/house-recipe/house-recipe-page.tsx';
import { HouseRecipesPage } from '#renderer/pages/house-recipes/house-recipes-page.tsx';
import { JarPage } from '#renderer/pages/jar/jar-page.tsx';
import { JarLabelsPage } from '#renderer/pages/jar-labels/jar-labels-page.tsx';
import { NowherePage } from '#renderer/pages/nowhere/nowhere-page.tsx';
import { PantryPage } from '#renderer/pages/pantry/pantry-page.tsx';
import { PenSheetsPage } from '#renderer/pages/pen-sheets/pen-sheets-page.tsx';
import { PhotosPage } from '#renderer/pages/photos/photos-page.tsx';
import { PlanAgainPage } from '#renderer/pages/plan/plan-again-page.tsx';
import { PlanPage } from '#renderer/pages/plan/plan-page.tsx';
import { PromotePage } from '#renderer/pages/promote/promote-page.tsx';
import { ReadingsImportPage } from '#renderer/pages/readings-import/readings-import-page.tsx';
import { SipsPage } from '#renderer/pages/sips/sips-page.tsx';
import { StickersPage } from '#renderer/pages/stickers/stickers-page.tsx';
import { BuildPage } from '#renderer/pages/taste/build-page.tsx';
import { TastePage } from '#renderer/pages/taste/taste-page.tsx';
import { TastersPage } from '#renderer/pages/tasters/tasters-page.tsx';
import { AlonePage } from '#renderer/pages/tasting/alone-page.tsx';
import { ImportPage } from '#renderer/pages/tasting/import-page.tsx';
import { PourPage } from '#renderer/pages/tasting/pour-page.tsx';
import { SheetPage } from '#renderer/pages/tasting/sheet-page.tsx';
import { TastingPage } from '#renderer/pages/tasting/tasting-page.tsx';
import { ApartTestPage } from '#renderer/pages/telling-apart/apart-test-page.tsx';
import { TellingApartPage } from '#renderer/pages/telling-apart/telling-apart-page.tsx';
import { TodayPage } from '#renderer/pages/today/today-page.tsx';
import { TrialPage } from '#renderer/pages/trial/trial-page.tsx';
import { TrialReportPage } from '#renderer/pages/trial-report/trial-report-page.tsx';
import { TrialsPage } from '#renderer/pages/trials/trials-page.tsx';
import { WishesPage } from '#renderer/pages/wishes/wishes-page.tsx';

/** Which address shows which page. */
export function Routes() {
  return (
    <Switch>
      <Route path="/" component={TodayPage} />
      <Route path="/trials" component={TrialsPage} />
      <Route path="/trials/new" component={PlanPage} />
      <Route path="/trials/:id">{({ id }) => <TrialPage id={id} />}</Route>
      <Route path="/trials/:id/again">{({ id }) => <PlanAgainPage id={id} />}</Route>
      <Route path="/trials/:id/photos">{({ id }) => <PhotosPage id={id} />}</Route>
      <Route path="/trials/:id/readings">{({ id }) => <ReadingsImportPage id={id} />}</Route>
      <Route path="/trials/:id/taste">{({ id }) => <TastePage id={id} />}</Route>
      <Route path="/trials/:id/taste/new">{({ id }) => <BuildPage id={id} />}</Route>
      <Route path="/trials/:id/taste/alone">{({ id }) => <BuildPage id={id} isAlone />}</Route>
      <Route path="/tastings/:id">{({ id }) => <TastingPage id={id} />}</Route>
      <Route path="/tastings/:id/pour">{({ id }) => <PourPage id={id} />}</Route>
      <Route path="/tastings/:id/alone">{({ id }) => <AlonePage id={id} />}</Route>
      <Route path="/tastings/:id/import">{({ id }) => <ImportPage id={id} />}</Route>
      <Route path="/tastings/:id/sheet/:taster">{({ id, taster }) => <SheetPage id={id} taster={taster} />}</Route>
      <Route path="/sips" component={SipsPage} />
      <Route path="/trials/:id/findings">{({ id }) => <FindingsPage id={id} />}</Route>
      <Route path="/trials/:id/telling-apart">{({ id }) => <TellingApartPage id={id} />}</Route>
      <Route path="/trials/:id/wishes">{({ id }) => <WishesPage id={id} />}</Route>
      <Route path="/telling-apart/:id">{({ id }) => <ApartTestPage id={id} />}</Route>
      <Route path="/jars/:id">{({ id }) => <JarPage id={id} />}</Route>
      <Route path="/trials/:id/promote">{({ id }) => <PromotePage id={id} />}</Route>
      <Route path="/trials/:id/labels">{({ id }) => <JarLabelsPage id={id} />}</Route>
      <Route path="/trials/:id/report">{({ id }) => <TrialReportPage id={id} />}</Route>
      <Route path="/tastings/:id/stickers">{({ id }) => <StickersPage id={id} />}</Route>
      <Route path="/tastings/:id/pen-sheets">{({ id }) => <PenSheetsPage id={id} />}</Route>
      <Route path="/house-recipes/:id/label">{({ id }) => <BottleLabelPage id={id} />}</Route>
      <Route path="/house-recipes" component={HouseRecipesPage} />
      <Route path="/house-recipes/:id">{({ id }) => <HouseRecipePage id={id} />}</Route>
      <Route path="/bases" component={BasesPage} />
      <Route path="/bases/:id">{({ id }) => <BasePage id={id} />}</Route>
      <Route path="/cultures/:id">{({ id }) => <CulturePage id={id} />}</Route>
      <Route path="/bottles" component={BottlesPage} />
      <Route path="/pantry" component={PantryPage} />
      <Route path="/tasters" component={TastersPage} />
      <Route path="/data" component={DataPage} />
      <Route component={NowherePage} />
    </Switch>
  );
}
