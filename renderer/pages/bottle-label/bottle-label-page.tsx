import { useState } from 'react';
import { Link } from 'wouter';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { typedNumber } from '#renderer/format/number-field.ts';
import { joined } from '#renderer/format/words.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { Field } from '#renderer/parts/field/field.tsx';
import type { GridName } from '#renderer/parts/label-sheet/label-grids.ts';
import { LabelSheetForm } from '#renderer/parts/label-sheet/label-sheet-form.tsx';
import { LabelSheets } from '#renderer/parts/label-sheet/label-sheets.tsx';
import { PrintLabels } from '#renderer/parts/label-sheet/print-labels.tsx';
import { readLabelDraft } from '#renderer/parts/label-sheet/read-label-draft.ts';
import { useLabelDraft } from '#renderer/parts/label-sheet/use-label-draft.ts';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { useFit } from '#renderer/parts/paper/use-fit.ts';
import { SampleMark } from '#renderer/parts/tape/tape.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { BottleForm } from './bottle-form.tsx';
import { BottleLabel } from './bottle-label.tsx';
import { bottleText, bottleWords } from './bottle-words.ts';
import { CopyLabel } from './copy-label.tsx';
import { useBottleDraft } from './use-bottle-draft.ts';
import { words } from './words.ts';

const grids: readonly [GridName, ...GridName[]] = ['2×4', '2×7'];
/** Below this the words of the cautions would be too small to read. */
const least = { width_mm: 70, height_mm: 38 };
const most = 500;

/** Five points: about the 0.9 mm of a small x that EU law asks for on small packages (Regulation 1169/2011, article 13). */
const smallest_mm = 5 / 2.835;

/** The part of a label's full type size (see the style sheet) below which it can't be read. */
function smallestPart({ width_mm, height_mm }: { readonly width_mm: number; readonly height_mm: number }): number {
  return Math.min(1, smallest_mm / Math.min(height_mm * 0.07, width_mm * 0.046));
}

type Recipe = ValueOf<'recipes:open'>;

interface BottleProps {
  readonly recipe: Recipe;
  readonly version: Recipe['versionList'][number];
  readonly pantry: ValueOf<'pantry:list'>['ingredients'];
}

function Bottle({ recipe, version, pantry }: BottleProps) {
  const [draft, setDraft] = useBottleDraft(version.id, {
    name: recipe.name,
    base: version.base?.name ?? '',
    volume: '',
    bestBefore: '',
    lot: recipe.batches.find((batch) => batch.version === version.number)?.lot ?? '',
    maker: '',
  });
  const [count, setCount] = useState('8');
  const [labels, setLabels] = useLabelDraft('bottle labels', grids[0]);
  const { layout, faults } = readLabelDraft(labels, least);

  const volume = typedNumber(draft.volume);
  const isVolume = volume.kind === 'none' || (volume.kind === 'number' && volume.value > 0);
  const own = {
    ...(draft.name.trim() === '' ? { name: words.noName } : {}),
    ...(draft.base.trim() === '' ? { base: words.noBase } : {}),
    ...(isVolume ? {} : { volume: words.notVolume }),
  };
  const read = typedNumber(count);
  const isCount = read.kind === 'number' && Number.isInteger(read.value) && read.value >= 1 && read.value <= most;
  const copies = isCount && Object.keys(own).length === 0 ? read.value : 0;
  const fit = useFit(smallestPart(layout ?? least));
  const label = bottleWords(version, draft, pantry);
  const said = words.bottleVolume(draft.volume.trim() || words.blank);
  return (
    <>
      <div className="no-print">
        <section className="section form">
          <BottleForm draft={draft} faults={own} onChange={setDraft} />
          {label.unknown.length === 0 ? null : <p>{words.unknown(joined(label.unknown))}</p>}
          <CopyLabel text={bottleText(label, said)} />
        </section>
        <section className="section form">
          <LabelSheetForm draft={labels} faults={faults} grids={grids} onChange={setLabels} />
          <div className="field-grid">
            <Field label={words.count} fault={isCount ? undefined : words.notCount(most)}>
              {(wiring) => (
                <input
                  {...wiring}
                  type="text"
                  inputMode="numeric"
                  value={count}
                  onChange={({ target }) => setCount(target.value)}
                />
              )}
            </Field>
          </div>
          {fit.isTooLong ? (
            <p className="field-fault" role="alert">
              {words.tooLong}
            </p>
          ) : null}
          <PrintLabels draft={labels} layout={layout} labels={fit.isTooLong ? 0 : copies} act={words.print} />
        </section>
      </div>
      {layout === null || copies === 0 ? null : (
        <LabelSheets
          layout={layout}
          labels={Array.from({ length: copies }, (_, place) => ({
            key: String(place),
            content: <BottleLabel label={label} volume={said} fit={fit} isFirst={place === 0} />,
          }))}
        />
      )}
    </>
  );
}

/** The words for a bottle of a house recipe, to copy or to print as labels. */
export function BottleLabelPage({ id }: { readonly id: string }) {
  const recipe = useAnswer('recipes:open', { recipe: id });
  const pantry = useAnswer('pantry:list', {});
  const [chosen, setChosen] = useState<number | null>(null);
  return (
    <Answer of={recipe}>
      {(value) => {
        const version = value.versionList.find(({ number }) => number === (chosen ?? value.latest));
        return (
          <>
            <div className="no-print">
              <PageHead
                above={
                  <>
                    <Link href={`/house-recipes/${id}`}>{words.back(value.name)}</Link>
                    <SampleMark when={value.isSample} />
                  </>
                }
                title={words.title}
                lead={words.lead}
              />
              {value.versionList.length < 2 ? null : (
                <div className="section field-grid">
                  <Field label={words.version}>
                    {(wiring) => (
                      <select
                        {...wiring}
                        value={version?.number}
                        onChange={({ target }) => setChosen(Number(target.value))}
                      >
                        {value.versionList.map(({ number }) => (
                          <option key={number} value={number}>
                            {number}
                          </option>
                        ))}
                      </select>
                    )}
                  </Field>
                </div>
              )}
            </div>
            <Answer of={pantry}>
              {({ ingredients }) =>
                version === undefined ? null : (
                  <Bottle key={version.id} recipe={value} version={version} pantry={ingredients} />
                )
              }
            </Answer>
          </>
        );
      }}
    </Answer>
  );
}
