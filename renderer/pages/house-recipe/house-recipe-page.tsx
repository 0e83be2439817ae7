import { useState } from 'react';
import { Link } from 'wouter';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { useMeasures } from '#renderer/format/use-measures.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { Button, ButtonLink } from '#renderer/parts/button/button.tsx';
import { EmptyState } from '#renderer/parts/empty-state/empty-state.tsx';
import { Facts } from '#renderer/parts/facts/facts.tsx';
import { HistoryLink } from '#renderer/parts/history-link/history-link.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { PerLitreTable } from '#renderer/parts/recipe/per-litre-table.tsx';
import { RecipeCautions } from '#renderer/parts/recipe/recipe-cautions.tsx';
import { RecipeChain } from '#renderer/parts/recipe/recipe-chain.tsx';
import { recipeFacts } from '#renderer/parts/recipe/recipe-facts.ts';
import { TargetTable } from '#renderer/parts/recipe/target-table.tsx';
import { words as recipeWords } from '#renderer/parts/recipe/words.ts';
import { SampleMark } from '#renderer/parts/tape/tape.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { Batches } from './batches.tsx';
import { MakeForm } from './make-form.tsx';
import { RecipeCard } from './recipe-card.tsx';
import { RecipeTools } from './recipe-tools.tsx';
import { ScoresBehind } from './scores-behind.tsx';
import { useMake, type Version } from './use-make.ts';
import { Versions } from './versions.tsx';
import { words } from './words.ts';
import './house-recipe.css';

type Recipe = ValueOf<'recipes:open'>;

interface ShownVersionProps {
  readonly recipe: Recipe;
  readonly version: Version;
  readonly onShow: (number: number) => void;
}

function ShownVersion({ recipe, version, onShow }: ShownVersionProps) {
  const measures = useMeasures();
  const make = useMake(recipe.id, version);
  const { trial, level } = version.chain;
  return (
    <>
      <div className="no-print">
        <PageHead
          above={
            <>
              <Link href="/house-recipes">{words.recipes}</Link>
              <SampleMark when={recipe.isSample} />
            </>
          }
          title={recipe.name}
          isTitleTheirs
          lead={
            <>
              {words.version(version.number)}. {recipeWords.plainBasis[version.basis]}
              {version.why === null ? null : ` ${version.why}`}
            </>
          }
          actions={
            <>
              <Button onClick={() => window.print()}>{words.print}</Button>
              <ButtonLink to={`/house-recipes/${recipe.id}/label`}>{words.bottleLabel}</ButtonLink>
            </>
          }
        />
        <div className="recipe-grid">
          <section className="section">
            <h2>
              <Explained words={words.make} />
            </h2>
            <MakeForm make={make} version={version} />
            <p className="soft small">
              <Explained words={words.printHint} />
            </p>
          </section>
          <section className="section">
            <h2>
              <Explained words={words.target} />
            </h2>
            <TargetTable version={version} />
          </section>
        </div>
        <RecipeTools recipe={recipe.id} version={version} make={make} />
        <section className="section">
          <h2>
            <Explained words={words.formula} />
          </h2>
          <PerLitreTable version={version} measures={measures} />
        </section>
        <section className="section">
          <h2>
            <Explained words={words.held} />
          </h2>
          <Facts facts={recipeFacts(version, measures)} />
        </section>
        <section className="section">
          <h2>
            <Explained words={words.chain} />
          </h2>
          <RecipeChain chain={version.chain} basis={version.basis} />
          {trial === null || level === null ? null : (
            <ScoresBehind trial={trial.id} level={level.name} basis={version.basis} />
          )}
        </section>
        <section className="section">
          <h2>
            <Explained words={recipeWords.cautions} />
          </h2>
          <RecipeCautions cautions={version.cautions} />
        </section>
        <section className="section">
          <h2>
            <Explained words={words.versions} />
          </h2>
          <Versions recipe={recipe} shown={version.number} onShow={onShow} />
        </section>
        <section className="section">
          <Batches recipe={recipe} version={version.number} volume_mL={make.volume_mL} />
        </section>
        <HistoryLink table="house_recipes" id={recipe.id} />
      </div>
      <RecipeCard name={recipe.name} version={version} make={make} />
    </>
  );
}

function WholeRecipe({ recipe }: { readonly recipe: Recipe }) {
  const [chosen, setChosen] = useState<number | null>(null);
  // A version that an undo took away gives place to the latest.
  const version =
    recipe.versionList.find(({ number }) => number === chosen) ??
    recipe.versionList.find(({ number }) => number === recipe.latest);
  if (version === undefined) return null;
  return <ShownVersion key={version.id} recipe={recipe} version={version} onShow={setChosen} />;
}

/** One house recipe: for any volume, its target, its chain, its cautions, its versions and batches, and a card to print. */
export function HouseRecipePage({ id }: { readonly id: string }) {
  const recipe = useAnswer('recipes:open', { recipe: id });
  // The last answer would linger after an undo took the recipe away.
  if (recipe.error?.code === 'not-found') {
    return (
      <>
        <PageHead title={words.gone} above={<Link href="/house-recipes">{words.recipes}</Link>} />
        <EmptyState title={words.goneLine} actions={<ButtonLink to="/house-recipes">{words.toAll}</ButtonLink>}>
          {null}
        </EmptyState>
      </>
    );
  }
  return <Answer of={recipe}>{(value) => <WholeRecipe recipe={value} />}</Answer>;
}
