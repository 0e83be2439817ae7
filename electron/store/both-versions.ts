import { phrase } from '#core/words/phrase.ts';
import type { Value } from './statements.ts';

const most = 120;

function words(value: Value): string {
  if (value === null) return 'nothing';
  const text = String(value);
  return `“${text.length > most ? `${text.slice(0, most)}…` : text}”`;
}

/** The sentence for an edit that came too late: what stands now and what was to be kept, field by field. */
export function bothVersions(now: object, yours: object): string {
  const standing = now as Readonly<Record<string, Value>>;
  const unlike = Object.entries(yours as Readonly<Record<string, Value>>).filter(
    ([column, value]) => standing[column] !== value,
  );
  const lines = unlike.map(
    ([column, value]) => phrase`${column}: there it is ${words(standing[column] ?? null)}, yours is ${words(value)}`,
  );
  const shown = lines.length === 0 ? '' : ` ${lines.join('; ')}.`;
  return phrase`This was changed elsewhere since you opened it. Nothing of yours was written.${shown} Open it again and choose.`;
}
