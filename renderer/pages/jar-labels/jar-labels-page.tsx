import { useState } from 'react';
import { Link } from 'wouter';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import type { GridName } from '#renderer/parts/label-sheet/label-grids.ts';
import { LabelSheetForm } from '#renderer/parts/label-sheet/label-sheet-form.tsx';
import { LabelSheets } from '#renderer/parts/label-sheet/label-sheets.tsx';
import { PrintLabels } from '#renderer/parts/label-sheet/print-labels.tsx';
import { readLabelDraft } from '#renderer/parts/label-sheet/read-label-draft.ts';
import { useLabelDraft } from '#renderer/parts/label-sheet/use-label-draft.ts';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { SampleMark } from '#renderer/parts/tape/tape.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { JarLabel } from './jar-label.tsx';
import { JarTicks } from './jar-ticks.tsx';
import { words } from './words.ts';

const grids: readonly [GridName, ...GridName[]] = ['3×8', '2×7'];
/** Below this the letters of a label with all its lines would be smaller than 5 points. */
const least = { width_mm: 44, height_mm: 24 };

function Labels({ trial }: { readonly trial: ValueOf<'trials:open'> }) {
  const [draft, setDraft] = useLabelDraft('jar labels', grids[0]);
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
  const { layout, faults } = readLabelDraft(draft, least);
  const standing = trial.jarsWhole.filter(({ state }) => state !== 'discarded');
  const jars = standing.filter(({ id }) => !left.has(id));
  return (
    <>
      <div className="no-print">
        <PageHead
          above={
            <>
              <Link href={`/trials/${trial.id}`}>{words.back}</Link>
              <SampleMark when={trial.isSample} />
            </>
          }
          title={words.title}
          lead={`${trial.question} ${words.lead}`}
        />
        <section className="section form">
          <LabelSheetForm draft={draft} faults={faults} grids={grids} onChange={setDraft} />
          <JarTicks jars={standing} left={left} onChange={setLeft} />
          <PrintLabels draft={draft} layout={layout} labels={jars.length} act={words.print} />
        </section>
      </div>
      {layout === null || jars.length === 0 ? null : (
        <LabelSheets
          layout={layout}
          labels={jars.map((jar) => ({ key: jar.id, content: <JarLabel trial={trial} jar={jar} /> }))}
        />
      )}
    </>
  );
}

/** Labels for the jars of a trial, on sheets or on a strip. */
export function JarLabelsPage({ id }: { readonly id: string }) {
  const trial = useAnswer('trials:open', { trial: id });
  return <Answer of={trial}>{(value) => <Labels trial={value} />}</Answer>;
}
