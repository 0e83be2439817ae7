import { Caution } from '#renderer/parts/caution/caution.tsx';
import { Explained } from '#renderer/parts/term/explained.tsx';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

/** Who must not taste what, before anything is poured. */
export function Warnings({ orders }: { readonly orders: ValueOf<'tastings:open'>['orders'] }) {
  const lines = orders.flatMap(({ warnings }) => warnings);
  if (lines.length === 0)
    return (
      <p className="soft">
        <Explained words={words.noWarnings} />
      </p>
    );
  return lines.map((line) => <Caution key={line}>{line}</Caution>);
}
