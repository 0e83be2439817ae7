import { Link } from 'wouter';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { useKeptChoice } from '#renderer/app/use-kept-choice.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { Field } from '#renderer/parts/field/field.tsx';
import type { GridName } from '#renderer/parts/label-sheet/label-grids.ts';
import { LabelSheetForm } from '#renderer/parts/label-sheet/label-sheet-form.tsx';
import { LabelSheets } from '#renderer/parts/label-sheet/label-sheets.tsx';
import { PrintLabels } from '#renderer/parts/label-sheet/print-labels.tsx';
import { readLabelDraft } from '#renderer/parts/label-sheet/read-label-draft.ts';
import { useLabelDraft } from '#renderer/parts/label-sheet/use-label-draft.ts';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { ForWhomField, useForWhom } from '#renderer/parts/paper/for-whom.tsx';
import { standingTasting } from '#renderer/parts/taken-out/standing-orders.ts';
import { SampleMark } from '#renderer/parts/tape/tape.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { type CupOrder, cupRuns } from './cup-runs.ts';
import { words } from './words.ts';
import './stickers.css';

const grids: readonly [GridName, ...GridName[]] = ['5×13', '3×8', '2×7'];
const least = { width_mm: 14, height_mm: 8 };
/** More than this a window draws too slowly. */
const most = 3000;

function keptOrder(body: unknown): CupOrder | null {
  return body === 'taster' || body === 'code' ? body : null;
}

/** Whether a code on a cup that stands upside down reads as another. */
function isTurnable(code: string): boolean {
  return /^[01689]+$/.test(code);
}

function Stickers({ tasting }: { readonly tasting: ValueOf<'tastings:open'> }) {
  const [draft, setDraft] = useLabelDraft('stickers', grids[0]);
  const [chosen, setOrder] = useKeptChoice('sticker order', keptOrder);
  const order = chosen ?? 'taster';
  const forWhom = useForWhom(tasting.orders);
  const { layout, faults } = readLabelDraft(draft, least);
  const { orders } = forWhom;
  const runs = cupRuns(orders, order);
  const cups = runs.flatMap(({ codes }) => codes);
  const isTooMany = cups.length > most;
  const starts = runs.map((_, place) => runs.slice(0, place).reduce((sum, { codes }) => sum + codes.length, 1));
  return (
    <>
      <div className="no-print">
        <PageHead
          above={
            <>
              <Link href={`/tastings/${tasting.id}`}>{tasting.name}</Link>
              <SampleMark when={tasting.isSample} />
            </>
          }
          title={words.title}
          lead={words.lead}
        />
        <section className="section form">
          <p>{words.cups(orders.length, tasting.samples, tasting.replicates, cups.length)}</p>
          <div className="field-grid">
            <Field label={words.order} hint={words.orderHint[order]}>
              {(wiring) => (
                <select {...wiring} value={order} onChange={({ target }) => setOrder(target.value as CupOrder)}>
                  {Object.entries(words.orders).map(([name, said]) => (
                    <option key={name} value={name}>
                      {said}
                    </option>
                  ))}
                </select>
              )}
            </Field>
            <ForWhomField of={forWhom} fault={isTooMany ? words.tooMany(cups.length, most) : undefined} />
          </div>
          <LabelSheetForm draft={draft} faults={faults} grids={grids} onChange={setDraft} />
          <PrintLabels draft={draft} layout={layout} labels={isTooMany ? 0 : cups.length} act={words.print} />
          <details>
            <summary>{words.runs}</summary>
            <ul>
              {runs.map(({ name, codes }, place) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: two tasters may share a name
                <li key={place} className="figures">
                  {words.run(name, starts[place] ?? 1, (starts[place] ?? 1) + codes.length - 1)}
                </li>
              ))}
            </ul>
          </details>
        </section>
      </div>
      {layout === null || isTooMany ? null : (
        <LabelSheets
          layout={layout}
          labels={cups.map((code, place) => ({
            key: `${place} ${code}`,
            content: <p className={isTurnable(code) ? 'sticker is-turnable' : 'sticker'}>{code}</p>,
          }))}
        />
      )}
    </>
  );
}

/** Blind codes for the cups of a tasting; it never asks which jar a code is. */
export function StickersPage({ id }: { readonly id: string }) {
  const tasting = useAnswer('tastings:open', { tasting: id });
  return <Answer of={tasting}>{(value) => <Stickers tasting={standingTasting(value)} />}</Answer>;
}
