import { phrase } from '#core/words/phrase.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { designWords, timesInTen } from './design-words.ts';
import { fewTastersWords, type Method, words } from './words.ts';

interface WhatItCanShowProps {
  readonly method: Method;
  readonly tasters: number;
  readonly rounds: number;
}

const sizeNames = [words.sizes.slight, words.sizes.clear, words.sizes.large];
const outOf100 = (chance: number) => phrase`${Math.round(chance * 100)} in 100`;

/** Before a cup is poured: how many right answers would mean something, and what would be found. */
export function WhatItCanShow({ method, tasters, rounds }: WhatItCanShowProps) {
  const answers = tasters * rounds;
  const design = useAnswer(
    'panel:discriminationDesign',
    { method, trials: Math.max(1, answers) },
    { enabled: answers > 0, keepLast: true },
  );
  if (answers === 0)
    return <p className="soft">{phrase`Choose who tastes, and it stands here what their answers can show.`}</p>;
  const few = fewTastersWords(tasters);
  return (
    <Answer of={design}>
      {(value) => (
        <div className="apart-design">
          <div role="status">
            {designWords(value, method, answers).map((line, place) => (
              <p key={line} className={place === 0 ? 'apart-first' : undefined}>
                {line}
              </p>
            ))}
            {few === null ? null : <p>{few}</p>}
            {rounds > 1 ? (
              <p>{phrase`Several rounds from one person tell more about that person than about people in general: more tasters say more than more rounds.`}</p>
            ) : null}
          </div>
          <DataTable
            caption={words.canShow}
            rows={value.chances.map((chance, place) => ({ ...chance, name: sizeNames[place] ?? '' }))}
            rowKey={({ name }) => name}
            columns={[
              { head: phrase`Difference`, cell: ({ name }) => name },
              { head: phrase`A taster is right`, cell: ({ right }) => outOf100(right), isFigure: true },
              { head: phrase`The test finds it`, cell: ({ power }) => timesInTen(power), isFigure: true },
            ]}
          />
          <p className="small soft">
            <Explained
              words={phrase`By luck alone a taster is right ${method === 'triangle' ? '33' : '50'} times in 100. Slight, clear and large stand for d′ of 1, ${1.5} and 2: common practice, no source.`}
            />
          </p>
        </div>
      )}
    </Answer>
  );
}
