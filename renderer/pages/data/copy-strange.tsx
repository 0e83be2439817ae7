import { useState } from 'react';
import { useLongRequest } from '#renderer/app/use-long-request.ts';
import { counted } from '#renderer/format/counted.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { Field } from '#renderer/parts/field/field.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { UnderWay } from '#renderer/parts/under-way/under-way.tsx';
import { carryWords } from './carry-words.ts';
import { NearKitchens } from './near-kitchens.tsx';
import { OpenBeside } from './open-beside.tsx';

/** Kitchens' files near at hand, to open; and of one that does not open, what could stand in a kitchen is copied into a new file. */
export function CopyStrange() {
  const copy = useLongRequest('store:copyStrange');
  const [file, setFile] = useState('');
  const done = copy.value;
  return (
    <div className="subsection data-take">
      <h3>
        <Explained words={carryWords.strange} />
      </h3>
      <p className="soft">
        <Explained words={carryWords.strangeLine} />
      </p>
      <NearKitchens
        isBusy={copy.isUnderWay}
        onCopy={(picked) => {
          setFile(picked);
          void copy.run({ file: picked });
        }}
      />
      <Field label={carryWords.strangeFile} fault={copy.failure?.message}>
        {(wiring) => (
          <input
            {...wiring}
            type="text"
            value={file}
            spellCheck={false}
            onChange={({ target }) => setFile(target.value)}
          />
        )}
      </Field>
      <div className="button-row">
        <Button disabled={copy.isUnderWay || file.trim() === ''} onClick={() => void copy.run({ file: file.trim() })}>
          {carryWords.copyStrange}
        </Button>
      </div>
      {copy.failure === null ? <UnderWay of={copy} doing={carryWords.copying} /> : null}
      {done === undefined ? null : (
        <>
          <p role="status">
            {carryWords.copied(counted(done.rows, 'row'), done.refused)} <span className="data-path">{done.file}</span>
          </p>
          <OpenBeside file={done.file} />
        </>
      )}
    </div>
  );
}
