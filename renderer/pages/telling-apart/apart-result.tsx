import { phrase } from '#core/words/phrase.ts';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { DPrimeDetails } from './d-prime-details.tsx';
import { GuessStrip } from './guess-strip.tsx';
import { jarsWords, words } from './words.ts';

type Test = ValueOf<'discriminations:open'>;

/** The sentence, the count against luck, and below the figures and every answer. */
export function ApartResult({ test }: { readonly test: Test }) {
  const { result, jarA, jarB } = test;
  const jars = [jarA, jarB].filter((jar) => jar !== null);
  return (
    <section className="section">
      <h2>
        <Explained words={words.found} />
      </h2>
      {result === null ? (
        <p>{words.nobody}</p>
      ) : (
        <>
          <p className="apart-sentence">{result.sentence}</p>
          <p className="soft">{phrase`The cups held ${jarsWords(jars)}.`}</p>
          <GuessStrip result={result} method={test.method} />
          <details className="apart-part">
            <summary>{words.figures}</summary>
            <DPrimeDetails result={result} method={test.method} />
          </details>
        </>
      )}
      <details className="apart-part">
        <summary>{words.revealed}</summary>
        <RevealedAnswers test={test} />
      </details>
    </section>
  );
}

function RevealedAnswers({ test }: { readonly test: Test }) {
  const { jarA, jarB, list, method } = test;
  const hasRounds = list.some(({ round }) => round > 1);
  const label = (letter: string) => (letter === 'A' ? jarA?.label : jarB?.label) ?? letter;
  const cupWords = (cups: string) => {
    const colon = cups.indexOf(':');
    const served = [...cups.slice(colon + 1)].map(label).join(' · ');
    return colon === -1 ? served : phrase`${label(cups[0] ?? '')} first, then ${served}`;
  };
  return (
    <DataTable
      caption={words.revealed}
      rows={list}
      rowKey={({ taster, round }) => `${taster} ${round}`}
      columns={[
        {
          head: words.tray,
          cell: ({ tasterName, round }) => (hasRounds ? `${tasterName}, ${words.round(round)}` : tasterName),
        },
        { head: phrase`Jars in the cups`, cell: ({ cups }) => (cups === null ? '–' : cupWords(cups)) },
        {
          head: phrase`Chose`,
          cell: ({ chosen, codes, chosenJar }) =>
            chosen === null ? phrase`no answer` : words.poured(codes[chosen - 1] ?? '', chosenJar ?? ''),
        },
        ...(method === 'paired-two-sided'
          ? []
          : [
              {
                head: method === 'paired' ? phrase`As expected` : phrase`Right`,
                cell: ({ isRight }: Test['list'][number]) => (isRight === null ? '–' : isRight ? 'yes' : 'no'),
              },
            ]),
      ]}
    />
  );
}
