import { useMeasures } from '#renderer/format/use-measures.ts';
import { Facts } from '#renderer/parts/facts/facts.tsx';
import { PerLitreTable } from '#renderer/parts/recipe/per-litre-table.tsx';
import { RecipeCautions } from '#renderer/parts/recipe/recipe-cautions.tsx';
import { RecipeChain } from '#renderer/parts/recipe/recipe-chain.tsx';
import { recipeFacts } from '#renderer/parts/recipe/recipe-facts.ts';
import { TargetTable } from '#renderer/parts/recipe/target-table.tsx';
import { words as recipeWords } from '#renderer/parts/recipe/words.ts';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

/** Everything that promoting this level writes down, before it is written. */
export function RecipePreview({ draft }: { readonly draft: ValueOf<'recipes:preview'> }) {
  const measures = useMeasures();
  return (
    <>
      <p className="promote-basis">{recipeWords.plainBasis[draft.basis]}</p>
      <div className="promote-preview">
        <div className="subsection">
          <h3>
            <Explained words={words.formula} />
          </h3>
          <PerLitreTable version={draft} measures={measures} />
        </div>
        <div className="subsection">
          <h3>
            <Explained words={words.target} />
          </h3>
          <TargetTable version={draft} />
        </div>
      </div>
      <div className="subsection">
        <h3>
          <Explained words={words.held} />
        </h3>
        <Facts facts={recipeFacts(draft, measures)} />
      </div>
      <div className="subsection">
        <h3>
          <Explained words={words.chain} />
        </h3>
        <RecipeChain chain={draft.chain} basis={draft.basis} />
      </div>
      <div className="subsection">
        <h3>
          <Explained words={recipeWords.cautions} />
        </h3>
        <RecipeCautions cautions={draft.cautions} />
      </div>
    </>
  );
}
