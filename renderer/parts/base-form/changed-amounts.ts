import { amountOf } from '#renderer/format/typed-amount.ts';
import type { Amount } from '#renderer/parts/amount-field/use-amount.ts';

type Amounts<Name extends string> = Readonly<Record<Name, Amount>>;

function entries<Name extends string>(amounts: Amounts<Name>): [Name, Amount][] {
  return Object.entries(amounts) as [Name, Amount][];
}

/** The amounts that were written. */
export function givenOf<Name extends string>(amounts: Amounts<Name>): Partial<Record<Name, number>> {
  const given: Partial<Record<Name, number>> = {};
  for (const [name, { typed }] of entries(amounts)) {
    const value = amountOf(typed);
    if (value !== undefined) given[name] = value;
  }
  return given;
}

/** The amounts that stand otherwise than at first; a cleared one is null. */
export function changeOf<Name extends string>(amounts: Amounts<Name>): Partial<Record<Name, number | null>> {
  const changed: Partial<Record<Name, number | null>> = {};
  for (const [name, { typed, isChanged }] of entries(amounts)) {
    if (isChanged) changed[name] = amountOf(typed) ?? null;
  }
  return changed;
}

/** A text that stands otherwise than at first; a cleared one is null. */
export function textChange<Name extends string>(
  name: Name,
  before: string,
  now: string,
): Partial<Record<Name, string | null>> {
  if (before.trim() === now.trim()) return {};
  const changed: Partial<Record<Name, string | null>> = {};
  changed[name] = now.trim() === '' ? null : now;
  return changed;
}
