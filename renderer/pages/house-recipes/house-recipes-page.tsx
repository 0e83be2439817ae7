import { phrase } from '#core/words/phrase.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { counted } from '#renderer/format/counted.ts';
import { dateWords } from '#renderer/format/moments.ts';
import { basisWords } from '#renderer/format/words.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { ButtonLink } from '#renderer/parts/button/button.tsx';
import { EmptyState } from '#renderer/parts/empty-state/empty-state.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { Row, RowList } from '#renderer/parts/row-list/row-list.tsx';
import { SampleMark } from '#renderer/parts/tape/tape.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { words } from './words.ts';

/** Every house recipe. */
export function HouseRecipesPage() {
  const recipes = useAnswer('recipes:list', {});
  return (
    <>
      <PageHead title={words.title} lead={words.lead} />
      <Answer of={recipes}>
        {({ recipes: all }) =>
          all.length === 0 ? (
            <EmptyState
              title={words.empty.title}
              actions={<ButtonLink to="/trials">{phrase`Look at the trials`}</ButtonLink>}
            >
              <p>
                <Explained words={words.empty.line} />
              </p>
            </EmptyState>
          ) : (
            <RowList label={words.title}>
              {all.map((recipe) => (
                <Row
                  key={recipe.id}
                  title={recipe.name}
                  to={`/house-recipes/${recipe.id}`}
                  marks={<SampleMark when={recipe.isSample} />}
                  facts={
                    <>
                      <span>{basisWords[recipe.basis]}</span>{' '}
                      <span>{phrase`since ${dateWords(recipe.createdAt)}`}</span>
                    </>
                  }
                  end={
                    recipe.versions === 1
                      ? phrase`version 1`
                      : phrase`version ${recipe.latest} of ${counted(recipe.versions, 'version')}`
                  }
                />
              ))}
            </RowList>
          )
        }
      </Answer>
    </>
  );
}
