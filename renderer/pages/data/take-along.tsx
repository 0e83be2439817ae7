import { useState } from 'react';
import { counting } from '#core/words/figures.ts';
import { useHandedFile } from '#renderer/app/use-handed-file.ts';
import { useLongRequest } from '#renderer/app/use-long-request.ts';
import { counted } from '#renderer/format/counted.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { Field } from '#renderer/parts/field/field.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { useSayWithUndo } from '#renderer/parts/toast/use-say-with-undo.ts';
import { UnderWay } from '#renderer/parts/under-way/under-way.tsx';
import type { CountedWork } from '#shared/carriage.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { carryWords } from './carry-words.ts';
import { sizeWords } from './size-words.ts';
import { countedRows, oneOf } from './table-words.ts';

const mostShown = 12;

type TakenIn = ValueOf<'data:takeIn'>;

/** What the export is at: its photos are counted, for they may last. */
function exportDoing(work: CountedWork | null): string {
  if (work === null) return carryWords.exporting;
  const { done, total, done_bytes, total_bytes } = work;
  return carryWords.exportingPhotos(counting(done), counting(total), sizeWords(done_bytes), sizeWords(total_bytes));
}

/** Everything as files: for a spreadsheet, for another kitchen, for keeps. */
export function ExportAll() {
  const all = useLongRequest('data:export');
  const bytes = (all.value?.files ?? []).reduce((sum, file) => sum + file.bytes, 0);
  return (
    <div className="subsection">
      <h3>
        <Explained words={carryWords.out} />
      </h3>
      <p className="soft">
        <Explained words={carryWords.outLine} />
      </p>
      <div className="button-row">
        <Button disabled={all.isUnderWay} onClick={() => void all.run({})}>
          {carryWords.export}
        </Button>
      </div>
      <UnderWay of={all} doing={exportDoing(all.work)} whenStopped={carryWords.exportStopped} />
      {all.value === undefined ? null : (
        <p role="status">
          {carryWords.exported(counted(all.value.files.length, 'file'), sizeWords(bytes))}{' '}
          <span className="data-path">{all.value.folder}</span>
        </p>
      )}
    </div>
  );
}

/** What taking a file in would bring, before anything is kept. */
function Preview({ found }: { readonly found: TakenIn }) {
  const lines = [
    ...found.fresh.map(({ table, rows }) => countedRows(rows, table)),
    ...(found.pictures === 0 ? [] : [carryWords.pictures(found.pictures)]),
    ...(found.same === 0 ? [] : [carryWords.same(counted(found.same, 'row'))]),
    ...found.renamed.slice(0, mostShown).map(({ name, becomes }) => carryWords.renamed(name, becomes)),
    ...found.kept.slice(0, mostShown).map(({ name, table }) => carryWords.kept(name, oneOf(table))),
    ...(found.kept.length > mostShown ? [carryWords.more(found.kept.length - mostShown)] : []),
  ];
  return (
    <ul className="data-list">
      {lines.map((line, place) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: lines may repeat and never move
        <li key={place}>{line}</li>
      ))}
    </ul>
  );
}

/** A trial or a kitchen from a file: looked at first, taken only when told. */
export function TakeInFile() {
  const look = useLongRequest('data:takeIn');
  const take = useLongRequest('data:takeIn');
  const sayWithUndo = useSayWithUndo();
  const [text, setText] = useState<string | null>(null);
  const [fault, setFault] = useState<string | undefined>(undefined);

  async function read(file: File | undefined) {
    take.forget();
    if (file === undefined) return;
    setFault(undefined);
    if (file.size > 40_000_000) return setFault(carryWords.tooLarge);
    try {
      const given = await file.text();
      setText(given);
      await look.run({ text: given, preview: true });
    } catch {
      setFault(carryWords.cantRead);
    }
  }

  async function keep(given: string) {
    const taken = await take.run({ text: given });
    if (taken !== null) void sayWithUndo(carryWords.isIn(taken.from), { of: 'data:takeIn' });
  }

  useHandedFile((file) => void read(file));

  const found = look.value;
  return (
    <div className="subsection data-take">
      <h3>
        <Explained words={carryWords.in} />
      </h3>
      <p className="soft">
        <Explained words={carryWords.inLine} />
      </p>
      <Field label={carryWords.file} fault={fault ?? look.failure?.message}>
        {(wiring) => (
          <input
            {...wiring}
            type="file"
            accept=".sidejar-trial,.json,application/json"
            onChange={({ target }) => void read(target.files?.[0])}
          />
        )}
      </Field>
      {look.failure === null ? <UnderWay of={look} doing={carryWords.looking} /> : null}
      <UnderWay of={take} doing={carryWords.taking} />
      {take.value === undefined ? null : <p role="status">{carryWords.taken(take.value.from)}</p>}
      {found === undefined || text === null || take.value !== undefined ? null : (
        <>
          <p role="status">
            {found.fresh.length === 0 ? carryWords.nothing : carryWords.found[found.holds](found.from)}
          </p>
          <Preview found={found} />
          {found.fresh.length === 0 ? null : (
            <div className="button-row">
              <Button weight="main" disabled={take.isUnderWay} onClick={() => void keep(text)}>
                {carryWords.take}
              </Button>
            </div>
          )}
        </>
      )}
    </div>
  );
}
