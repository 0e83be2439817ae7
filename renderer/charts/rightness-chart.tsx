import { phrase } from '#core/words/phrase.ts';
import { capital } from '#renderer/format/words.ts';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { csvText, tabbedText } from '#shared/csv-text.ts';
import { attributeColour } from './attribute-colour.ts';
import { ChartFrame } from './chart-frame.tsx';
import { figureWords } from './figure-words.ts';
import { RightnessDrawing } from './late-drawings.ts';

type Rightness = ValueOf<'findings:penalties'>['attributes'][number];
type Level = Rightness['levels'][number];

const words = {
  scale: phrase`▾ too little, ● just right, ▴ too much`,
  caption: (attribute: string) => phrase`${attribute}: answers of each level, and what they cost in liking`,
  key: phrase`Each bar: how many answers found too little (▾), just right (●) and too much (▴).`,
} as const;

/** What a side cost in liking. @example '2.1 less' */
function costWords(drop: number | null | undefined): string {
  if (drop === null || drop === undefined) return '–';
  return `${figureWords(Math.abs(drop))} ${drop >= 0 ? phrase`less` : phrase`more`}`;
}

const heads = [
  phrase`Level`,
  phrase`Too little`,
  phrase`Just right`,
  phrase`Too much`,
  phrase`Liking where too little`,
  phrase`Liking where too much`,
] as const;

/** A just-about-right scale: bars of what was found, and the table with what it cost. */
export function RightnessChart({ rightness }: { readonly rightness: Rightness }) {
  const { attribute, levels, sentences } = rightness;
  const title = capital(attribute);
  const counts = levels.map(({ level, counts: { tooLittle, right, tooMuch } }) => ({
    level,
    tooLittle,
    right,
    tooMuch,
  }));
  const rows = levels.map(({ level, counts: own, penalties }) => [
    level,
    own.tooLittle,
    own.right,
    own.tooMuch,
    penalties?.tooLittle.drop ?? null,
    penalties?.tooMuch.drop ?? null,
  ]);
  return (
    <ChartFrame
      title={title}
      scale={words.scale}
      sentence={sentences[0] ?? null}
      more={sentences.slice(1).join(' ') || null}
      colour={attributeColour(attribute)}
      isLead={false}
      figures={tabbedText([heads.slice(0, 4), ...rows.map((row) => row.slice(0, 4))])}
      csv={() =>
        csvText([
          [
            'level',
            phrase`too little`,
            phrase`just right`,
            phrase`too much`,
            phrase`liking lost where too little`,
            phrase`liking lost where too much`,
          ],
          ...rows,
        ])
      }
      chartKey={words.key}
      table={
        <DataTable
          caption={words.caption(title)}
          rows={levels}
          rowKey={({ level }) => level}
          columns={[
            { head: heads[0], cell: ({ level }) => level },
            { head: heads[1], cell: (row: Level) => row.counts.tooLittle, isFigure: true },
            { head: heads[2], cell: (row: Level) => row.counts.right, isFigure: true },
            { head: heads[3], cell: (row: Level) => row.counts.tooMuch, isFigure: true },
            { head: heads[4], cell: (row: Level) => costWords(row.penalties?.tooLittle.drop), isFigure: true },
            { head: heads[5], cell: (row: Level) => costWords(row.penalties?.tooMuch.drop), isFigure: true },
          ]}
        />
      }
    >
      <RightnessDrawing attribute={attribute} rows={counts} />
    </ChartFrame>
  );
}
