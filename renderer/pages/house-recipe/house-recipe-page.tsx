import { useState } from 'react';
import { Link } from 'wouter';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { figureWords } from '#renderer/charts/figure-words.ts';
import { dateWords } from '#renderer/format/moments.ts';
import { useMeasures } from '#renderer/format/use-measures.ts';
import { basisWords, capital, counted, joined } from '#renderer/format/words.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { Button } from '#renderer/parts/button/button.tsx';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { Row, RowList } from '#renderer/parts/row-list/row-list.tsx';
import { SampleMark } from '#renderer/parts/tape/tape.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { ScaledFormula } from './scaled-formula.tsx';
import { versionDifferences } from './version-differences.ts';
import { words } from './words.ts';
import './house-recipe.css';

type Recipe = ValueOf<'recipes:open'>;
type Version = Recipe['versionList'][number];

function Target({ version }: { readonly version: Version }) {
  if (version.target.length === 0) return <p className="soft">{words.noTarget}</p>;
  return (
    <DataTable
      caption={words.targetTable}
      rows={version.target}
      rowKey={({ attribute }) => attribute}
      columns={[
        { head: 'Attribute', cell: ({ attribute }) => capital(attribute) },
        { head: 'Mean', cell: ({ mean }) => figureWords(mean), isFigure: true },
        { head: 'Spread', cell: ({ spread }) => figureWords(spread), isFigure: true },
        { head: 'Scores', cell: ({ n }) => n, isFigure: true },
      ]}
    />
  );
}

/** The way back from a version to the trial, its jars and its tastings. */
function Chain({ chain, basis }: Version) {
  if (chain.trial === null) return <p className="soft">{words.noChain}</p>;
  return (
    <ol className="chain">
      <li>
        Trial: <Link href={`/trials/${chain.trial.id}`}>{chain.trial.question}</Link>
      </li>
      {chain.level === null ? null : <li>Level: {chain.level.name}</li>}
      {chain.jars.length === 0 ? null : (
        <li>
          {chain.jars.length === 1 ? 'Jar' : 'Jars'} {joined(chain.jars.map(({ label }) => label))}
        </li>
      )}
      {chain.tastings.map(({ id, name, scores }) => (
        <li key={id}>
          Tasting: {name}, {counted(scores, 'score')}
        </li>
      ))}
      <li>{capital(basisWords[basis])}</li>
    </ol>
  );
}

function Versions({ recipe, shown, onShow }: { recipe: Recipe; shown: number; onShow: (number: number) => void }) {
  const ordered = recipe.versionList.toSorted((a, b) => a.number - b.number);
  return ordered.toReversed().map((version) => {
    const before = ordered[ordered.indexOf(version) - 1];
    const differences = before === undefined ? [words.first] : versionDifferences(before, version);
    return (
      <div key={version.id} className="version">
        <div className="section-head">
          <h3>
            {words.version(version.number)} <span className="soft small">{dateWords(version.createdAt)}</span>
          </h3>
          {version.number === shown ? (
            <span className="soft">shown above</span>
          ) : (
            <Button weight="quiet" onClick={() => onShow(version.number)}>
              Show version {version.number}
            </Button>
          )}
        </div>
        {(differences.length === 0 ? [words.sameFormula] : differences).map((sentence) => (
          <p key={sentence}>{capital(sentence)}</p>
        ))}
        {version.why === null ? null : <p className="soft">{version.why}</p>}
      </div>
    );
  });
}

function Batches({ recipe }: { readonly recipe: Recipe }) {
  const { volume } = useMeasures();
  if (recipe.batches.length === 0) return <p className="soft">{words.noBatches}</p>;
  return (
    <RowList label={words.batches}>
      {recipe.batches.map((batch) => (
        <Row
          key={batch.id}
          title={batch.lot ?? dateWords(batch.madeAt)}
          facts={
            <>
              <span>{dateWords(batch.madeAt)}</span> <span>version {batch.version}</span>{' '}
              {batch.note === null ? null : <span>{batch.note}</span>}
            </>
          }
          end={volume(batch.volume_mL)}
        />
      ))}
    </RowList>
  );
}

function WholeRecipe({ recipe }: { readonly recipe: Recipe }) {
  const [chosen, setChosen] = useState<number | null>(null);
  const number = chosen ?? recipe.latest;
  const version = recipe.versionList.find((one) => one.number === number);
  return (
    <>
      <PageHead
        above={
          <>
            <Link href="/house-recipes">{words.recipes}</Link>
            <SampleMark when={recipe.isSample} />
          </>
        }
        title={recipe.name}
        lead={words.version(number)}
        actions={<Button onClick={() => window.print()}>{words.print}</Button>}
      />
      {version === undefined ? null : (
        <>
          <section className="section">
            <h2>{words.formula}</h2>
            <ScaledFormula key={version.id} recipe={recipe.id} version={version} />
          </section>
          <section className="section">
            <h2>{words.target}</h2>
            <Target version={version} />
          </section>
          <section className="section">
            <h2>{words.chain}</h2>
            <Chain {...version} />
          </section>
        </>
      )}
      <section className="section no-print">
        <h2>{words.versions}</h2>
        <Versions recipe={recipe} shown={number} onShow={setChosen} />
      </section>
      <section className="section no-print">
        <h2>{words.batches}</h2>
        <Batches recipe={recipe} />
      </section>
    </>
  );
}

/** One house recipe: its formula for any volume, its target, its chain, its versions. */
export function HouseRecipePage({ id }: { readonly id: string }) {
  const recipe = useAnswer('recipes:open', { recipe: id });
  return <Answer of={recipe}>{(value) => <WholeRecipe recipe={value} />}</Answer>;
}
