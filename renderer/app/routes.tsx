import { Suspense } from 'react';
import { Route, Switch } from 'wouter';
import { NowherePage } from '#renderer/pages/nowhere/nowhere-page.tsx';
import { TodayPage } from '#renderer/pages/today/today-page.tsx';
import {
  AlonePage,
  ApartTestPage,
  BasePage,
  BasesPage,
  BottleLabelPage,
  BottlesPage,
  BuildPage,
  CulturePage,
  DataPage,
  FindingsPage,
  HistoryPage,
  HouseRecipePage,
  HouseRecipesPage,
  ImportPage,
  JarLabelsPage,
  JarPage,
  PantryPage,
  PenSheetsPage,
  PhotosPage,
  PlanAgainPage,
  PlanFromBasePage,
  PlanPage,
  PourPage,
  PromotePage,
  ReadingsImportPage,
  SheetPage,
  SipsPage,
  StepPage,
  StickersPage,
  TastePage,
  TastersPage,
  TastingPage,
  TellingApartPage,
  TrialPage,
  TrialReportPage,
  TrialsPage,
  WishesPage,
} from './later-screens.ts';

/** Which address shows which page. */
export function Routes() {
  return (
    <Suspense fallback={null}>
      <Switch>
        <Route path="/" component={TodayPage} />
        <Route path="/trials" component={TrialsPage} />
        <Route path="/trials/new" component={PlanPage} />
        <Route path="/trials/:id">{({ id }) => <TrialPage id={id} />}</Route>
        <Route path="/trials/:id/again">{({ id }) => <PlanAgainPage id={id} />}</Route>
        <Route path="/trials/:id/photos">{({ id }) => <PhotosPage id={id} />}</Route>
        <Route path="/trials/:id/readings">{({ id }) => <ReadingsImportPage id={id} />}</Route>
        <Route path="/trials/:id/taste">{({ id }) => <TastePage id={id} />}</Route>
        <Route path="/trials/:id/taste/new">{({ id }) => <BuildPage key={id} id={id} />}</Route>
        <Route path="/trials/:id/taste/alone">{({ id }) => <BuildPage key={`alone ${id}`} id={id} isAlone />}</Route>
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
        <Route path="/bases/:id/plan">{({ id }) => <PlanFromBasePage id={id} />}</Route>
        <Route path="/cultures/:id">{({ id }) => <CulturePage id={id} />}</Route>
        <Route path="/bottles" component={BottlesPage} />
        <Route path="/pantry" component={PantryPage} />
        <Route path="/tasters" component={TastersPage} />
        <Route path="/data" component={DataPage} />
        <Route path="/history/step/:step">{({ step }) => <StepPage step={step} />}</Route>
        <Route path="/history/:table/:id">{({ table, id }) => <HistoryPage table={table} id={id} />}</Route>
        <Route component={NowherePage} />
      </Switch>
    </Suspense>
  );
}
