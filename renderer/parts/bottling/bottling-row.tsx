import { type ReactNode, useState } from 'react';
import { useRequest } from '#renderer/app/use-request.ts';
import { dayAndTime, dayWords } from '#renderer/format/moments.ts';
import { useMeasures } from '#renderer/format/use-measures.ts';
import { vesselWords } from '#renderer/format/words.ts';
import { Button } from '#renderer/parts/button/button.tsx';
import { Caution } from '#renderer/parts/caution/caution.tsx';
import { RowHistoryLink } from '#renderer/parts/history-link/history-link.tsx';
import { Sheet } from '#renderer/parts/sheet/sheet.tsx';
import { SampleMark } from '#renderer/parts/tape/tape.tsx';
import { useSayWithUndo } from '#renderer/parts/toast/use-say-with-undo.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { OpenBottle } from './open-bottle.tsx';
import { pourWords, words } from './words.ts';
import './bottling.css';

export type Bottling = ValueOf<'bottles:list'>['bottlings'][number];

function Openings({ openings }: Pick<Bottling, 'openings'>) {
  if (openings.length === 0) return null;
  return (
    <details>
      <summary>{words.openings}</summary>
      <ul>
        {openings.map(({ id, openedAt, pour, note }) => (
          <li key={id}>
            {words.openedSo(dayAndTime(openedAt), pourWords[pour])}
            {note === null ? '' : `, ${note}`}
          </li>
        ))}
      </ul>
    </details>
  );
}

function BottlingCautions({ bottling }: { readonly bottling: Bottling }) {
  if (bottling.left === 0) return null;
  return (
    <>
      {bottling.openings.at(-1)?.pour === 'gushed' ? <Caution basis={words.gushBasis}>{words.gushLine}</Caution> : null}
      {bottling.cautions.map(({ code, message, basis }) => (
        <Caution key={code} basis={basis}>
          {message}
        </Caution>
      ))}
    </>
  );
}

function BottlingActs({ bottling, name }: { readonly bottling: Bottling; readonly name: string }) {
  const [isOpening, setIsOpening] = useState(false);
  const sayWithUndo = useSayWithUndo();
  const chill = useRequest('bottles:chill');
  const remove = useRequest('bottles:remove');
  const { id, left, chilledAt } = bottling;
  return (
    <>
      <div className="button-row">
        {left === 0 ? null : (
          <Button weight="main" aria-label={words.openOf(name)} onClick={() => setIsOpening(true)}>
            {words.open}
          </Button>
        )}
        {left === 0 || chilledAt !== null ? null : (
          <Button
            disabled={chill.isPending}
            aria-label={words.chillOf(name)}
            onClick={() => chill.mutate({ bottling: id }, { onSuccess: () => void sayWithUndo(words.chilled(name)) })}
          >
            {words.chill}
          </Button>
        )}
        <Button
          weight="quiet"
          disabled={remove.isPending}
          aria-label={words.takeOutOf(name)}
          onClick={() => remove.mutate({ bottling: id }, { onSuccess: () => void sayWithUndo(words.takenOut) })}
        >
          {words.takeOut}
        </Button>
      </div>
      {isOpening ? (
        <Sheet title={words.openOf(name)} onClose={() => setIsOpening(false)}>
          <OpenBottle bottling={id} onDone={() => setIsOpening(false)} />
        </Sheet>
      ) : null}
    </>
  );
}

/** One bottling: how many are left, when chilled, how they poured, what to beware of. */
export function BottlingRow({ bottling, source }: { readonly bottling: Bottling; readonly source?: ReactNode }) {
  const { volume, sugar, pressure } = useMeasures();
  const { count, size_mL, closure, bottledAt, chilledAt, lot, sugar_g_per_L, ratedGauge_bar, left } = bottling;
  const bottles = words.bottles(count, volume(size_mL), vesselWords[closure]);
  const name = lot === null ? bottles : `${lot}: ${bottles}`;
  return (
    <li className="row">
      <div className="row-words">
        <p className="row-title">
          {name} <SampleMark when={bottling.isSample} />
        </p>
        <div className="row-facts">
          {source === undefined ? null : <span>{source}</span>} <span>{words.bottledAt(dayWords(bottledAt))}</span>{' '}
          <span>{chilledAt === null ? words.notChilled : words.chilledAt(dayWords(chilledAt))}</span>{' '}
          {sugar_g_per_L === null ? null : <span>{words.sugarAt(sugar(sugar_g_per_L))}</span>}{' '}
          {ratedGauge_bar === null ? null : <span>{words.rated(pressure(ratedGauge_bar))}</span>}{' '}
          {bottling.note === null ? null : <span>{bottling.note}</span>}
        </div>
      </div>
      <div className="row-end figures">{words.left(left, count)}</div>
      <BottlingActs bottling={bottling} name={name} />
      <div className="bottling-more">
        <BottlingCautions bottling={bottling} />
        <Openings openings={bottling.openings} />
        <RowHistoryLink table="bottlings" id={bottling.id} name={name} />
      </div>
    </li>
  );
}
