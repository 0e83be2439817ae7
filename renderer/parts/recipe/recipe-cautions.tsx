import { Caution } from '#renderer/parts/caution/caution.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';
import './recipe-parts.css';

/** The usual cautions of a drink, each with its basis. */
export function RecipeCautions({ cautions }: Pick<ValueOf<'recipes:preview'>, 'cautions'>) {
  return (
    <div className="recipe-cautions">
      {cautions.map(({ code, message, basis }) => (
        <Caution key={`${code} ${message}`} basis={basis}>
          {message}
        </Caution>
      ))}
      <p className="soft small">
        <Explained words={words.cautionsNote} />
      </p>
    </div>
  );
}
