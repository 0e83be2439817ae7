import { useState } from 'react';
import { Link } from 'wouter';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { Button, ButtonLink } from '#renderer/parts/button/button.tsx';
import { OrderBalance } from '#renderer/parts/order-balance/order-balance.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { takenOutCodes } from '#renderer/parts/taken-out/standing-orders.ts';
import { TakenOutList } from '#renderer/parts/taken-out/taken-out-list.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import { PouringCodes, ServingOrders } from './pouring-list.tsx';
import { Warnings } from './warnings.tsx';
import { words } from './words.ts';
import './pour.css';

/** For the one who pours: which code is which jar, behind a deliberate opening, and the serving orders. */
export function PourPage({ id }: { readonly id: string }) {
  const tasting = useAnswer('tastings:open', { tasting: id });
  const [isShown, setIsShown] = useState(false);
  return (
    <Answer of={tasting}>
      {(value) => (
        <>
          <PageHead
            above={<Link href={`/tastings/${id}`}>{value.name}</Link>}
            title={words.pourTitle}
            lead={words.pourLead}
            actions={<ButtonLink to={`/tastings/${id}/stickers`}>{words.toStickers}</ButtonLink>}
          />
          <div className="section">
            <TakenOutList samples={value.sampleList} />
            <Warnings orders={value.orders} />
          </div>
          <section className="section">
            <div className="section-head">
              <h2>
                <Explained words={words.codes} />
              </h2>
              {isShown ? (
                <span className="button-row no-print">
                  <Button onClick={() => window.print()}>{words.print}</Button>
                  <Button weight="quiet" onClick={() => setIsShown(false)}>
                    {words.pourHide}
                  </Button>
                </span>
              ) : null}
            </div>
            {isShown ? (
              <PouringCodes id={id} cups={value.orders.length * value.replicates} />
            ) : (
              <div className="pour-gate">
                <p>{words.pourGate}</p>
                <Button weight="main" onClick={() => setIsShown(true)}>
                  {words.pourOpen}
                </Button>
              </div>
            )}
          </section>
          <section className="section">
            <h2>
              <Explained words={words.orders} />
            </h2>
            <ServingOrders orders={value.orders} gone={takenOutCodes(value)} />
            <OrderBalance orders={value.orders.flatMap(({ sittings }) => sittings.map(({ codes }) => codes))} />
          </section>
        </>
      )}
    </Answer>
  );
}
