import { joined } from '#renderer/format/words.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { needWords } from './words.ts';

export type Need = ValueOf<'today:read'>['needs'][number];

/** What the need is of, in words: "A, B and C", "Batch 7". */
export function needOf({ jars, base, culture, tasting }: Need): string {
  if (jars.length > 0) return joined(jars.map(({ name }) => name));
  return (base ?? culture ?? tasting)?.name ?? '';
}

export function needTitle(need: Need): string {
  return needWords[need.kind].title(needOf(need));
}

/** Where the need leads: to the tasting, the trial, the base or the culture. */
export function needDoor({ kind, tasting, trial, base, culture }: Need): string {
  if (tasting !== null) return `/tastings/${tasting.id}`;
  if (trial !== null) return kind === 'taste' ? `/trials/${trial.id}/taste` : `/trials/${trial.id}`;
  if (base !== null) return `/bases/${base.id}`;
  return `/cultures/${culture?.id ?? ''}`;
}

/** The machine's own time zone, whose days are meant. */
export function ownZone(): string {
  return Intl.DateTimeFormat().resolvedOptions().timeZone;
}
