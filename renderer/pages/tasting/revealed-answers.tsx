import { scaleWord } from '#renderer/format/scale-words.ts';
import { type Column, DataTable } from '#renderer/parts/data-table/data-table.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { justAboutRightWord } from '#shared/just-about-right-words.ts';
import type { Attribute } from './score-cell.tsx';
import { words } from './words.ts';

type Tasting = ValueOf<'tastings:open'>;
type Scores = ValueOf<'scores:list'>['scores'];

/** All that one taster answered for one sample, serving by serving. */
function answerWords(scores: Scores, taster: string, sample: string, { name, kind }: Attribute): string {
  const answers = scores
    .filter((one) => one.taster === taster && one.sample === sample && one.attribute === name)
    .toSorted((a, b) => a.replicate - b.replicate)
    .map(({ score }) => (kind === 'place' ? String(score) : scaleWord(justAboutRightWord(score) ?? String(score))));
  return answers.length === 0 ? words.noAnswer : answers.join('; ');
}

/** After the end: places and just-about-right answers as they were given, taster by taster, each under its jar. */
export function RevealedAnswers({ tasting, scores }: { readonly tasting: Tasting; readonly scores: Scores }) {
  const shown = tasting.attributes.filter(({ kind }) => kind !== 'scale');
  const samples = tasting.sampleList.toSorted((a, b) =>
    (a.jar?.label ?? '').localeCompare(b.jar?.label ?? '', 'en', { numeric: true }),
  );
  return shown.map((attribute) => {
    const title = attribute.kind === 'place' ? words.placesGiven : words.stepsGiven(attribute.name);
    const columns: Column<Tasting['orders'][number]>[] = [
      { head: words.taster, cell: ({ name }) => name },
      ...samples.map(({ code, jar }) => ({
        head: jar === null ? code : words.jarHead(jar.label, jar.level, tasting.trial === null ? code : null),
        cell: ({ name }: Tasting['orders'][number]) => answerWords(scores, name, code, attribute),
        isFigure: attribute.kind === 'place',
      })),
    ];
    return (
      <div key={attribute.id} className="subsection">
        <h3>{title}</h3>
        {attribute.kind === 'place' ? (
          <p className="soft">
            <Explained words={words.placesLine} />
          </p>
        ) : null}
        <DataTable caption={title} rows={tasting.orders} rowKey={({ taster }) => taster} columns={columns} />
      </div>
    );
  });
}
