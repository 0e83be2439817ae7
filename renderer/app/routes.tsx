import { Route, Switch } from 'wouter';
import { BasesPage } from '#renderer/pages/bases/bases-page.tsx';
import { DataPage } from '#renderer/pages/data/data-page.tsx';
import { FindingsPage } from '#renderer/pages/findings/findings-page.tsx';
import { HouseRecipePage } from '#renderer/pages/house-recipe/house-recipe-page.tsx';
import { HouseRecipesPage } from '#renderer/pages/house-recipes/house-recipes-page.tsx';
import { NowherePage } from '#renderer/pages/nowhere/nowhere-page.tsx';
import { PantryPage } from '#renderer/pages/pantry/pantry-page.tsx';
import { TastePage } from '#renderer/pages/taste/taste-page.tsx';
import { TastersPage } from '#renderer/pages/tasters/tasters-page.tsx';
import { ApartTestPage } from '#renderer/pages/telling-apart/apart-test-page.tsx';
import { TellingApartPage } from '#renderer/pages/telling-apart/telling-apart-page.tsx';
import { TodayPage } from '#renderer/pages/today/today-page.tsx';
import { TrialPage } from '#renderer/pages/trial/trial-page.tsx';
import { TrialsPage } from '#renderer/pages/trials/trials-page.tsx';
import { WishesPage } from '#renderer/pages/wishes/wishes-page.tsx';

/** Which address shows which page. */
export function Routes() {
  return (
    <Switch>
      <Route path="/" component={TodayPage} />
      <Route path="/trials" component={TrialsPage} />
      <Route path="/trials/:id">{({ id }) => <TrialPage id={id} />}</Route>
      <Route path="/trials/:id/taste">{({ id }) => <TastePage id={id} />}</Route>
      <Route path="/trials/:id/findings">{({ id }) => <FindingsPage id={id} />}</Route>
      <Route path="/trials/:id/telling-apart">{({ id }) => <TellingApartPage id={id} />}</Route>
      <Route path="/trials/:id/wishes">{({ id }) => <WishesPage id={id} />}</Route>
      <Route path="/telling-apart/:id">{({ id }) => <ApartTestPage id={id} />}</Route>
      <Route path="/house-recipes" component={HouseRecipesPage} />
      <Route path="/house-recipes/:id">{({ id }) => <HouseRecipePage id={id} />}</Route>
      <Route path="/bases" component={BasesPage} />
      <Route path="/pantry" component={PantryPage} />
      <Route path="/tasters" component={TastersPage} />
      <Route path="/data" component={DataPage} />
      <Route component={NowherePage} />
    </Switch>
  );
}
