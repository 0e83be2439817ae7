import { useId, useState } from 'react';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { Button } from '#renderer/parts/button/button.tsx';
import { DataTable } from '#renderer/parts/data-table/data-table.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { pouredTrays } from './poured-trays.ts';
import { words } from './words.ts';

function PouredTable({ discrimination }: { readonly discrimination: string }) {
  const poured = useAnswer('discriminations:pour', { discrimination });
  return (
    <Answer of={poured}>
      {(value) => {
        const trays = pouredTrays(value);
        const places = trays[0]?.cups.map((_, place) => place) ?? [];
        return (
          <DataTable
            caption={words.pouring}
            rows={trays}
            rowKey={({ key }) => key}
            columns={[
              { head: words.tray, cell: ({ title }) => title },
              ...(trays[0]?.reference == null
                ? []
                : [{ head: words.reference, cell: ({ reference }: (typeof trays)[number]) => reference }]),
              ...places.map((place) => ({
                head: words.cup(place + 1),
                cell: ({ cups }: (typeof trays)[number]) => cups[place] ?? '',
              })),
            ]}
          />
        );
      }}
    </Answer>
  );
}

/** Which jar goes into which cup. Shut until whoever pours opens it. */
export function PouringList({ test }: { readonly test: ValueOf<'discriminations:open'> }) {
  const [isOpen, setOpen] = useState(false);
  const id = useId();
  return (
    <>
      <p className="soft">
        <Explained words={words.pouringLine} />
      </p>
      <div className="button-row no-print">
        <Button aria-expanded={isOpen} aria-controls={id} onClick={() => setOpen(!isOpen)}>
          {isOpen ? words.hidePouring : words.showPouring}
        </Button>
      </div>
      <div id={id} className="apart-part">
        {isOpen ? <PouredTable discrimination={test.id} /> : null}
      </div>
    </>
  );
}
