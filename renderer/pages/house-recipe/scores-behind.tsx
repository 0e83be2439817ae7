import { phrase } from '#core/words/phrase.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { attributesInOrder } from '#renderer/charts/attribute-colour.ts';
import { figureWords } from '#renderer/charts/figure-words.ts';
import { capital, joined } from '#renderer/format/words.ts';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import type { Version } from './use-make.ts';
import { words } from './words.ts';

interface ScoresBehindProps {
  readonly trial: string;
  readonly level: string;
  readonly basis: Version['basis'];
}

/** The end of the chain: what each taster gave this level. */
export function ScoresBehind({ trial, level, basis }: ScoresBehindProps) {
  const { data } = useAnswer('findings:read', { trial }, { enabled: basis === 'panel' });
  const scores = data?.scores.filter(({ sample }) => sample === level) ?? [];
  if (scores.length === 0) return null;
  const attributes = attributesInOrder([...new Set(scores.map(({ attribute }) => attribute))]);
  const tasters = [...new Set(scores.map(({ taster }) => taster))].sort();
  const given = (taster: string, attribute: string) =>
    scores.filter((one) => one.taster === taster && one.attribute === attribute).map(({ score }) => figureWords(score));
  return (
    <details className="scores-behind">
      <summary>{words.scores}</summary>
      <DataTable
        caption={words.scores}
        rows={tasters}
        rowKey={(taster) => taster}
        columns={[
          { head: phrase`Taster`, cell: (taster) => taster },
          ...attributes.map((attribute) => ({
            head: capital(attribute),
            cell: (taster: string) => joined(given(taster, attribute)) || '–',
            isFigure: true,
          })),
        ]}
      />
    </details>
  );
}
