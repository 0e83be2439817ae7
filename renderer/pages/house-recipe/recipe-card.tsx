import { phrase } from '#core/words/phrase.ts';
import { figureWords } from '#renderer/charts/figure-words.ts';
import { dateWords } from '#renderer/format/moments.ts';
import { useMeasures } from '#renderer/format/use-measures.ts';
import { capital, joined } from '#renderer/format/words.ts';
import { recipeFacts } from '#renderer/parts/recipe/recipe-facts.ts';
import { words as recipeWords } from '#renderer/parts/recipe/words.ts';
import type { Make, Version } from './use-make.ts';
import { words } from './words.ts';
import './recipe-card.css';

interface RecipeCardProps {
  readonly name: string;
  readonly version: Version;
  readonly make: Make;
}

/** "From the trial “…”, jar C, tasting “…”": the chain in one sentence. */
function chainSentence({ chain, basis }: Version): string {
  if (chain.trial === null) return recipeWords.noChain;
  const jars = chain.jars.length === 0 ? '' : phrase`, jar ${joined(chain.jars.map(({ label }) => label))}`;
  const level = chain.level === null ? '' : phrase`, level “${chain.level.name}”`;
  const tastings = chain.tastings.map(({ name, scores }) => phrase`“${name}” (${scores} scores)`);
  const tasted = tastings.length === 0 ? '' : phrase`, tasted at ${joined(tastings)}`;
  return phrase`Trial “${chain.trial.question}”${level}${jars}${tasted}. ${recipeWords.plainBasis[basis]}`;
}

/** One page for the kitchen wall: only seen on paper. */
export function RecipeCard({ name, version, make }: RecipeCardProps) {
  const measures = useMeasures();
  const count = version.formula.additions.length;
  const length = count > 24 ? ' is-longest' : count > 12 ? ' is-long' : '';
  return (
    <article className="sheet-card" aria-label={name}>
      <header>
        <h2>{name}</h2>
        <p>
          {words.version(version.number)}, {dateWords(version.createdAt)}.{' '}
          {words.card.makes(measures.volume(make.volume_mL))}.
        </p>
        {version.why === null ? null : <p className="sheet-why">{version.why}</p>}
      </header>
      <ol className={`sheet-lines${length}`}>
        <li>
          {measures.volume(make.base_mL)} {words.base}
        </li>
        {make.measured.lines.map((line) => (
          <li key={line.key}>{line.words}</li>
        ))}
      </ol>
      <dl className="sheet-facts">
        {recipeFacts(version, measures).map((fact) => (
          <div key={fact.name}>
            <dt>{fact.name}</dt>
            <dd>{fact.value}</dd>
          </div>
        ))}
      </dl>
      <section>
        <h3>{words.target}</h3>
        {version.target.length === 0 ? (
          <p>{recipeWords.noTarget}</p>
        ) : (
          <p>
            {version.target
              .map(
                ({ attribute, mean, spread }) =>
                  `${capital(attribute)} ${figureWords(mean)}${spread === null ? '' : ` ± ${figureWords(spread)}`}`,
              )
              .join('; ')}
            . {version.basis === 'panel' ? recipeWords.spreadOfPanel : recipeWords.targetOfSips}
          </p>
        )}
      </section>
      <section>
        <h3>{recipeWords.cautions}</h3>
        <ul className="sheet-cautions">
          {version.cautions.map(({ code, message, basis }) => (
            <li key={`${code} ${message}`}>
              {message} <small>{basis}.</small>
            </li>
          ))}
        </ul>
        <p>{recipeWords.cautionsNote}</p>
      </section>
      <section>
        <h3>{words.chain}</h3>
        <p>{chainSentence(version)}</p>
      </section>
      <footer>
        {[words.card.madeOn, words.card.by, words.card.lot, words.card.madeAmount, words.card.tasted].map((what) => (
          <span key={what}>{what}</span>
        ))}
      </footer>
    </article>
  );
}
