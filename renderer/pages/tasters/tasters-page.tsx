import { useState } from 'react';
import { phrase } from '#core/words/phrase.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { useRequest } from '#renderer/app/use-request.ts';
import { counted } from '#renderer/format/counted.ts';
import { joined } from '#renderer/format/words.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { Button } from '#renderer/parts/button/button.tsx';
import { EmptyState } from '#renderer/parts/empty-state/empty-state.tsx';
import { HistoryLink } from '#renderer/parts/history-link/history-link.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { Row, RowList } from '#renderer/parts/row-list/row-list.tsx';
import { Sheet } from '#renderer/parts/sheet/sheet.tsx';
import { SampleMark } from '#renderer/parts/tape/tape.tsx';
import { TasterForm } from '#renderer/parts/taster-form/taster-form.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

type Taster = ValueOf<'tasters:list'>['tasters'][number];

function avoidWords({ avoids, avoidsAlcohol }: Taster): string {
  const all = [...avoids, ...(avoidsAlcohol ? [phrase`alcohol`] : [])];
  return all.length === 0 ? phrase`avoids nothing that we know of` : phrase`avoids ${joined(all)}`;
}

function TasterRow({ taster, onChange }: { readonly taster: Taster; readonly onChange: () => void }) {
  const remove = useRequest('tasters:remove', { done: () => words.removed(taster.name) });
  return (
    <Row
      title={taster.name}
      marks={<SampleMark when={taster.isSample} />}
      facts={
        <>
          <span>{avoidWords(taster)}</span> {taster.note === null ? null : <span>{taster.note}</span>}
        </>
      }
      end={counted(taster.tastings, 'tasting')}
      actions={
        <>
          <Button weight="quiet" onClick={onChange} aria-label={`${words.change} ${taster.name}`}>
            {words.change}
          </Button>
          <Button
            weight="quiet"
            disabled={remove.isPending}
            onClick={() => remove.mutate({ taster: taster.id })}
            aria-label={`${words.remove} ${taster.name}`}
          >
            {words.remove}
          </Button>
        </>
      }
    />
  );
}

/** The people who taste. */
export function TastersPage() {
  const tasters = useAnswer('tasters:list', {});
  const [shown, setShown] = useState<Taster | 'new' | null>(null);
  const add = (
    <Button weight="main" onClick={() => setShown('new')}>
      {words.add}
    </Button>
  );
  const isEmpty = tasters.data?.tasters.length === 0;
  return (
    <>
      <PageHead title={words.title} lead={words.lead} actions={isEmpty ? null : add} />
      <Answer of={tasters}>
        {({ tasters: all }) =>
          all.length === 0 ? (
            <EmptyState title={words.empty.title} actions={add}>
              <p>
                <Explained words={words.empty.line} />
              </p>
            </EmptyState>
          ) : (
            <RowList label={words.title}>
              {all.map((taster) => (
                <TasterRow key={taster.id} taster={taster} onChange={() => setShown(taster)} />
              ))}
            </RowList>
          )
        }
      </Answer>
      {shown === null ? null : (
        <Sheet title={shown === 'new' ? words.add : shown.name} onClose={() => setShown(null)}>
          <TasterForm taster={shown === 'new' ? null : shown} onDone={() => setShown(null)} />
          {shown === 'new' ? null : <HistoryLink table="tasters" id={shown.id} />}
        </Sheet>
      )}
    </>
  );
}
