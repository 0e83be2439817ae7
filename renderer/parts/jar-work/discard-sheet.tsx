import { useRequest } from '#renderer/app/use-request.ts';
import { joined } from '#renderer/format/words.ts';
import { faultAt, faultElsewhere } from '#renderer/parts/field/fault-at.ts';
import { useSayWithUndo } from '#renderer/parts/toast/use-say-with-undo.ts';
import type { Jar } from './next-act.ts';
import { ReasonSheet } from './reason-sheet.tsx';
import { words } from './words.ts';

/** Asks why a jar is thrown away, and notes it. */
export function DiscardSheet({ jar, onClose }: { readonly jar: Jar; readonly onClose: () => void }) {
  const sayWithUndo = useSayWithUndo();
  const discard = useRequest('jars:discard', { showsFailure: true });
  return (
    <ReasonSheet
      title={words.discardTitle(jar.label)}
      label={words.reason}
      hint={words.reasonHint}
      fault={faultAt(discard.error, 'reason')}
      elsewhere={faultElsewhere(discard.error, ['reason'])}
      reasons={words.reasons}
      act={words.discardIt}
      weight="grave"
      isPending={discard.isPending}
      onSend={(reason) =>
        discard.mutate(
          { jars: [jar.id], reason },
          {
            onSuccess: ({ tastings }) => {
              onClose();
              const out = tastings.length === 0 ? '' : ` ${words.outOf(joined(tastings))}`;
              void sayWithUndo(`${words.discarded(jar.label)}${out}`);
            },
          },
        )
      }
      onClose={onClose}
    />
  );
}
