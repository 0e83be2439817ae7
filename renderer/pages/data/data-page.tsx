import { counting } from '#core/words/figures.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { useRequest } from '#renderer/app/use-request.ts';
import { counted } from '#renderer/format/counted.ts';
import { capital } from '#renderer/format/words.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { Button } from '#renderer/parts/button/button.tsx';
import { SampleKitchenButton } from '#renderer/parts/empty-state/first-steps.tsx';
import { Facts } from '#renderer/parts/facts/facts.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { Backups } from './backups.tsx';
import { Bin } from './bin.tsx';
import { Care } from './care.tsx';
import { carryWords } from './carry-words.ts';
import { CopyStrange } from './copy-strange.tsx';
import { EraseTaster } from './erase-taster.tsx';
import { History } from './history.tsx';
import { KitchenForm } from './kitchen-form.tsx';
import { MadeOf } from './made-of.tsx';
import { shownTables } from './table-words.ts';
import { ExportAll, TakeInFile } from './take-along.tsx';
import { ThisWindow } from './this-window.tsx';
import { words } from './words.ts';
import './data.css';

type Kitchen = ValueOf<'kitchen:open'>;

function countsOf({ counts }: Kitchen): { name: string; value: string }[] {
  return shownTables.flatMap(({ table, many }) => {
    const count = counts[table] ?? 0;
    return count === 0 ? [] : [{ name: capital(many), value: counting(count) }];
  });
}

function Sample({ kitchen }: { readonly kitchen: Kitchen }) {
  const remove = useRequest('kitchen:removeSample', { done: ({ rows }) => words.sampleGone(counted(rows, 'row')) });
  if (kitchen.sampleRows === 0 && countsOf(kitchen).length > 0) return null;
  return (
    <section className="section">
      <h2>
        <Explained words={words.sample} />
      </h2>
      <p>
        <Explained
          words={kitchen.sampleRows > 0 ? words.sampleLine(counted(kitchen.sampleRows, 'row')) : words.sampleOffer}
        />
      </p>
      <div className="button-row">
        {kitchen.sampleRows > 0 ? (
          <Button disabled={remove.isPending} onClick={() => remove.mutate({})}>
            {words.sampleLeave}
          </Button>
        ) : (
          <SampleKitchenButton />
        )}
      </div>
    </section>
  );
}

/** The kitchen's file: what it holds, its care, its history and its bin. */
export function DataPage() {
  const kitchen = useAnswer('kitchen:open', {});
  return (
    <>
      <PageHead title={words.title} lead={words.lead} />
      <Answer of={kitchen}>
        {(value) => (
          <>
            <section className="section">
              <h2>
                <Explained words={words.kitchen} />
              </h2>
              <KitchenForm key={value.name} kitchen={value} />
              <Facts facts={[{ name: words.file, value: <span className="data-path">{value.file}</span> }]} />
              <Facts facts={countsOf(value)} />
            </section>
            <section className="section">
              <h2>
                <Explained words={words.care} />
              </h2>
              <Care />
            </section>
            <section className="section">
              <h2>
                <Explained words={words.backups} />
              </h2>
              <Backups />
            </section>
            <section className="section">
              <h2>
                <Explained words={carryWords.title} />
              </h2>
              <ExportAll />
              <TakeInFile />
              <CopyStrange />
            </section>
            <Sample kitchen={value} />
          </>
        )}
      </Answer>
      <ThisWindow />
      <section className="section">
        <h2>
          <Explained words={words.bin} />
        </h2>
        <p className="soft">
          <Explained words={words.binLead} />
        </p>
        <Bin />
      </section>
      <section className="section">
        <h2>
          <Explained words={words.history} />
        </h2>
        <History />
      </section>
      <section className="section">
        <h2>
          <Explained words={words.eraseTaster} />
        </h2>
        <EraseTaster />
      </section>
      <MadeOf />
    </>
  );
}
