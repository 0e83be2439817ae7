import type { Caution } from '#core/ferment/caution.ts';
import { readingCautions } from '#core/ferment/reading-cautions.ts';
import { hoursBetween } from '#core/trial/moment.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';
import { useNow } from '#renderer/format/use-now.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import type { Watched } from './watched.ts';

type Readings = ValueOf<'bases:open'>['readings'];

const none = '00000000-0000-0000-0000-000000000000';

/** What a drink is called decides whether the guidance for kombucha is shown as meant for it. */
function isKombucha(base: Pick<ValueOf<'bases:open'>, 'name' | 'culture'> | undefined): boolean {
  return /kombucha|scoby/i.test(`${base?.name ?? ''} ${base?.culture?.name ?? ''} ${base?.culture?.kind ?? ''}`);
}

/** The cautions of a pH that is about to be logged, beside those read before it. Asks only once there is one. */
export function usePhCautions({ owner }: Watched, pH: number | undefined): readonly Caution[] {
  const now = useNow();
  const isAsked = pH !== undefined;
  const jarId = 'jar' in owner ? owner.jar : null;
  const jar = useAnswer('jars:open', { jar: jarId ?? none }, { enabled: isAsked && jarId !== null });
  const trialId = jar.data?.jar.trial ?? null;
  const trial = useAnswer('trials:open', { trial: trialId ?? none }, { enabled: isAsked && trialId !== null });
  const baseId = 'base' in owner ? owner.base : (trial.data?.base?.id ?? null);
  const base = useAnswer('bases:open', { base: baseId ?? none }, { enabled: isAsked && baseId !== null });
  if (pH === undefined) return [];
  const earlier: Readings = (jarId === null ? base.data?.readings : jar.data?.readings) ?? [];
  const first = earlier[0]?.takenAt ?? new Date(now).toISOString();
  const before = earlier.flatMap(({ ph, takenAt }) =>
    ph === null ? [] : [{ hours: hoursBetween(first, takenAt), pH: ph }],
  );
  const last = Math.max(0, ...before.map(({ hours }) => hours));
  const drink = isKombucha(base.data) ? 'kombucha' : 'other';
  return readingCautions([...before, { hours: last + 1, pH }], drink);
}
