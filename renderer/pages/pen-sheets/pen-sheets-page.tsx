import { Link } from 'wouter';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { Answer } from '#renderer/parts/answer/answer.tsx';
import { Button } from '#renderer/parts/button/button.tsx';
import { PageHead } from '#renderer/parts/page-head/page-head.tsx';
import { ForWhomField, useForWhom } from '#renderer/parts/paper/for-whom.tsx';
import { Paper } from '#renderer/parts/paper/paper.tsx';
import { PaperField } from '#renderer/parts/paper/paper-field.tsx';
import { usePaperSize } from '#renderer/parts/paper/use-paper-size.ts';
import { standingTasting } from '#renderer/parts/taken-out/standing-orders.ts';
import { SampleMark } from '#renderer/parts/tape/tape.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { mayGrow, PenSheet } from './pen-sheet.tsx';
import { words } from './words.ts';
import './pen-sheets.css';

function PenSheets({ tasting }: { readonly tasting: ValueOf<'tastings:open'> }) {
  const paper = usePaperSize();
  const forWhom = useForWhom(tasting.orders);
  const { orders } = forWhom;
  const grows = orders.some((order) => mayGrow(tasting, order, paper.size));
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
          <div className="field-grid">
            <PaperField paper={paper} />
            <ForWhomField of={forWhom} />
          </div>
          <p role="status">{grows ? words.grow(orders.length) : words.pages(orders.length)}</p>
          <div className="button-row">
            <Button weight="main" onClick={() => window.print()}>
              {words.print}
            </Button>
          </div>
          <p className="soft small">{words.printHint}</p>
        </section>
      </div>
      <Paper size={paper.size} label={words.preview}>
        {orders.map((order) => (
          <PenSheet key={order.taster} tasting={tasting} order={order} paper={paper.size} />
        ))}
      </Paper>
    </>
  );
}

/** Tasting sheets for pen and paper, one page a taster, blind. */
export function PenSheetsPage({ id }: { readonly id: string }) {
  const tasting = useAnswer('tastings:open', { tasting: id });
  return <Answer of={tasting}>{(value) => <PenSheets tasting={standingTasting(value)} />}</Answer>;
}
