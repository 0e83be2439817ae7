import type { Factor } from '#core/trial/factor.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';

export type Sip = ValueOf<'sips:byTrial'>['sips'][number];

const sipped = ['tang', 'fizz', 'sweetness', 'liking'] as const;
type Sipped = (typeof sipped)[number];

/** One sip's score of one attribute, and where it stands. */
export interface SipMark {
  readonly id: string;
  readonly x: number;
  readonly value: number;
  readonly jar: string;
  readonly level: string;
  readonly day: number;
}

function sippedName(attribute: string): Sipped | undefined {
  return sipped.find((name) => name === attribute.toLowerCase());
}

/** The scale that sips are noted on; null for what a sip does not note. */
export function sipScale(attribute: string): readonly [number, number] | null {
  const name = sippedName(attribute);
  if (name === undefined) return null;
  return name === 'liking' ? [1, 9] : [0, 10];
}

/** The attributes that at least one sip notes, in the order of the score sheet. */
export function sippedAttributes(sips: readonly Sip[]): string[] {
  return sipped.filter((name) => sips.some((sip) => sip[name] !== null));
}

/**
 * Where the maker's sips stand in a chart of one attribute. Where days are the factor a sip stands at its own day, whichever jar it came
 * from; otherwise at its jar's level.
 */
export function sipMarks(
  sips: readonly Sip[],
  attribute: string,
  factor: Factor,
  placeOf: (level: string) => number,
): SipMark[] {
  const name = sippedName(attribute);
  if (name === undefined) return [];
  return sips.flatMap((sip) => {
    const value = sip[name];
    if (value === null) return [];
    const x = factor === 'days' ? sip.day : placeOf(sip.levelName);
    return [{ id: sip.id, x, value, jar: sip.label, level: sip.levelName, day: sip.day }];
  });
}
