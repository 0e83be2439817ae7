import { Link } from 'wouter';
import { phrase } from '#core/words/phrase.ts';
import { counted } from '#renderer/format/counted.ts';
import { joined } from '#renderer/format/words.ts';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';
import './recipe-parts.css';

type Draft = ValueOf<'recipes:preview'>;

/** The way back from a recipe to the trial, its jars and its scores. */
export function RecipeChain({ chain, basis }: Pick<Draft, 'chain' | 'basis'>) {
  if (chain.trial === null)
    return (
      <p className="soft">
        <Explained words={words.noChain} />
      </p>
    );
  const trial = `/trials/${chain.trial.id}`;
  return (
    <ol className="chain">
      <li>
        {phrase`Trial:`} <Link href={trial}>{chain.trial.question}</Link>
      </li>
      {chain.level === null ? null : <li>{phrase`Level: ${chain.level.name}`}</li>}
      {chain.jars.length === 0 ? null : (
        <li>
          {chain.jars.length === 1 ? phrase`Jar` : phrase`Jars`} {joined(chain.jars.map(({ label }) => label))}
        </li>
      )}
      {chain.tastings.map(({ id, name, scores }) => (
        <li key={id}>
          {phrase`Tasting:`} <Link href={`${trial}/findings`}>{name}</Link>
          {phrase`, ${counted(scores, 'score')} of this level`}
        </li>
      ))}
      <li>{words.plainBasis[basis]}</li>
    </ol>
  );
}
