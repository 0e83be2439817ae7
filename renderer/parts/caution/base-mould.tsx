import { baseMouldCaution } from '#core/ferment/standing-cautions.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { Caution } from './caution.tsx';

/** What stands at a jar, a trial and a tasting when the base behind it was seen with mould. */
export function BaseMould({ mould }: { readonly mould: ValueOf<'jars:open'>['baseMould'] }) {
  if (mould === null) return null;
  const { message, basis } = baseMouldCaution(mould.name);
  return <Caution basis={basis}>{message}</Caution>;
}

function OfTrial({ trial }: { readonly trial: string }) {
  const open = useAnswer('trials:open', { trial });
  return open.data === undefined ? null : <BaseMould mould={open.data.baseMould} />;
}

/** The same by the trial alone. */
export function BaseMouldOfTrial({ trial }: { readonly trial: string | null }) {
  return trial === null ? null : <OfTrial trial={trial} />;
}
