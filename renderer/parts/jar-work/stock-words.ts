import type { Measures } from '#renderer/format/use-measures.ts';
import { joined } from '#renderer/format/words.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

export type Taken = ValueOf<'jars:start'>['stock'];

/** What starting jars did to what is on hand; nothing where nobody counts anything. */
export function stockWords(stock: Taken, { mass }: Measures): string[] {
  const counted = stock.filter(({ left_g }) => left_g !== null);
  if (counted.length === 0) return [];
  const left = counted
    .filter(({ short_g }) => short_g === null)
    .map(({ name, left_g }) => `${mass(left_g ?? 0)} ${name}`);
  const short = counted.flatMap(({ name, short_g }) => (short_g === null ? [] : [`${name} (${mass(short_g)})`]));
  const unknown = stock.filter(({ left_g }) => left_g === null).map(({ name }) => name);
  return [
    ...(left.length === 0 ? [] : [words.started.left(joined(left))]),
    ...(short.length === 0 ? [] : [words.started.short(joined(short))]),
    ...(unknown.length === 0 ? [] : [words.started.unknown(joined(unknown))]),
  ];
}
