import { type FormEvent, useState } from 'react';
import { phrase } from '#core/words/phrase.ts';
import { useRequest } from '#renderer/app/use-request.ts';
import { dateWords } from '#renderer/format/moments.ts';
import { amountOf, typedVolume } from '#renderer/format/typed-amount.ts';
import { useMeasures } from '#renderer/format/use-measures.ts';
import { AmountField } from '#renderer/parts/amount-field/amount-field.tsx';
import { useAmount } from '#renderer/parts/amount-field/use-amount.ts';
import { BottleIt } from '#renderer/parts/bottling/bottles-of.tsx';
import { Button } from '#renderer/parts/button/button.tsx';
import { faultAt, faultElsewhere } from '#renderer/parts/field/fault-at.ts';
import { Field } from '#renderer/parts/field/field.tsx';
import { Row, RowList } from '#renderer/parts/row-list/row-list.tsx';
import { Sheet } from '#renderer/parts/sheet/sheet.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

interface BatchesProps {
  readonly recipe: ValueOf<'recipes:open'>;
  readonly version: number;
  /** As much as the page is set to make. */
  readonly volume_mL: number;
}

function BatchForm({ recipe, version, volume_mL, onDone }: BatchesProps & { readonly onDone: () => void }) {
  const measures = useMeasures();
  const volume = useAmount(measures.volume(volume_mL), (text) => typedVolume(text, measures.system));
  const [lot, setLot] = useState('');
  const [note, setNote] = useState('');
  const log = useRequest('batches:log', { showsFailure: true, done: () => words.batchKept });
  // Left as it stands, it is what the page is set to, to the millilitre.
  const made_mL = volume.isChanged ? amountOf(volume.typed) : volume_mL;

  function keep(event: FormEvent) {
    event.preventDefault();
    if (made_mL === undefined) return;
    log.mutate(
      {
        recipe: recipe.id,
        version,
        volume_mL: made_mL,
        ...(lot.trim() === '' ? {} : { lot: lot.trim() }),
        ...(note.trim() === '' ? {} : { note: note.trim() }),
      },
      { onSuccess: onDone },
    );
  }

  const elsewhere = faultElsewhere(log.error, ['volume_mL', 'lot', 'note']);
  return (
    <form className="form" onSubmit={keep} noValidate>
      <AmountField
        label={words.madeVolume}
        hint={words.volumeHint[measures.system]}
        amount={volume}
        isTried
        missing={words.notVolume}
        fault={faultAt(log.error, 'volume_mL')}
      />
      <Field label={words.lot} hint={words.lotHint} fault={faultAt(log.error, 'lot')}>
        {(wiring) => (
          <input {...wiring} type="text" maxLength={60} value={lot} onChange={({ target }) => setLot(target.value)} />
        )}
      </Field>
      <Field label={words.note} fault={faultAt(log.error, 'note')}>
        {(wiring) => (
          <textarea
            {...wiring}
            rows={2}
            maxLength={4000}
            value={note}
            onChange={({ target }) => setNote(target.value)}
          />
        )}
      </Field>
      {elsewhere === undefined ? null : (
        <p className="field-fault" role="alert">
          {elsewhere}
        </p>
      )}
      <div className="button-row">
        <Button type="submit" weight="main" disabled={log.isPending}>
          {words.keep}
        </Button>
      </div>
    </form>
  );
}

/** The makes of this recipe, and a new one. */
export function Batches({ recipe, version, volume_mL }: BatchesProps) {
  const { volume } = useMeasures();
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <div className="section-head">
        <h2>
          <Explained words={words.batches} />
        </h2>
        <Button onClick={() => setOpen(true)}>{words.logBatch}</Button>
      </div>
      {recipe.batches.length === 0 ? (
        <p className="soft">
          <Explained words={words.noBatches} />
        </p>
      ) : (
        <RowList label={words.batches}>
          {recipe.batches.map((batch) => (
            <Row
              key={batch.id}
              title={batch.lot ?? dateWords(batch.madeAt)}
              facts={
                <>
                  <span>{dateWords(batch.madeAt)}</span> <span>{phrase`version ${batch.version}`}</span>{' '}
                  {batch.note === null ? null : <span>{batch.note}</span>}
                </>
              }
              end={volume(batch.volume_mL)}
              actions={
                <BottleIt
                  source={{
                    owner: { batch: batch.id },
                    name: batch.lot ?? dateWords(batch.madeAt),
                    lot: batch.lot,
                  }}
                />
              }
            />
          ))}
        </RowList>
      )}
      {isOpen ? (
        <Sheet title={words.batchOf(recipe.name, version)} onClose={() => setOpen(false)}>
          <BatchForm recipe={recipe} version={version} volume_mL={volume_mL} onDone={() => setOpen(false)} />
        </Sheet>
      ) : null}
    </>
  );
}
