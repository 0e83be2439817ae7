import { phrase } from '#core/words/phrase.ts';
import type { Measures } from '#renderer/format/use-measures.ts';
import type { pours } from '#shared/closed-lists.ts';

export const pourWords: Readonly<Record<(typeof pours)[number], string>> = {
  flat: phrase`flat`,
  gentle: phrase`gentle`,
  lively: phrase`lively`,
  gushed: phrase`gushed`,
};

export const words = {
  title: phrase`Bottles`,
  none: phrase`Nothing is bottled from it yet.`,
  fill: phrase`Bottle it`,
  fillOf: (what: string) => phrase`Bottle it: ${what}`,
  count: phrase`How many bottles`,
  countFault: phrase`Write a whole number, from 1 to 10,000.`,
  size: phrase`Size of a bottle`,
  sizeHint: { metric: phrase`Such as 500 mL or ${0.75} L.`, us: phrase`Such as 16 fl oz or 1 pt.` },
  sizeMissing: phrase`Say how large a bottle is.`,
  closure: phrase`Kind of bottle`,
  rating: phrase`Pressure it is made for`,
  ratingHint: {
    metric: phrase`In bar, from its maker; empty: nobody says.`,
    us: phrase`In psi, from its maker; empty: nobody says.`,
  },
  sugar: phrase`Sugar at closing`,
  sugarHint: {
    metric: phrase`Measure it just before: 6 g/L, ${1.5} brix or ${1.006}; empty: not known.`,
    us: phrase`Measure it just before: ${0.8} oz/gal, ${1.5} brix or ${1.006}; empty: not known.`,
  },
  lot: phrase`Lot code`,
  note: phrase`Note`,
  keep: phrase`Keep`,
  filled: (what: string) => phrase`Bottled ${what}.`,
  bound: (gauge_bar: { readonly ambient: number; readonly at35: number }, { pressure, temperature }: Measures) =>
    phrase`If all that sugar ferments: up to ${pressure(gauge_bar.ambient)} at ${temperature(22)}, ${pressure(gauge_bar.at35)} at ${temperature(35)} (filled to 96 %).`,
  bottles: (count: number, size: string, kind: string) => `${count} × ${size}, ${kind}`,
  bottledAt: (at: string) => phrase`bottled ${at}`,
  chilledAt: (at: string) => phrase`chilled ${at}`,
  notChilled: phrase`not chilled yet`,
  rated: (pressure: string) => phrase`made for ${pressure}`,
  sugarAt: (sugar: string) => phrase`${sugar} sugar at closing`,
  left: (left: number, count: number) => phrase`${left} of ${count} left`,
  chill: phrase`Chilled`,
  chillOf: (what: string) => phrase`Chilled: ${what}`,
  chilled: (what: string) => phrase`${what}: chilled.`,
  open: phrase`Open one…`,
  openOf: (what: string) => phrase`Open one: ${what}`,
  howPoured: phrase`How did it pour?`,
  remark: phrase`What you noticed (may stay empty)`,
  opened: (pour: string) => phrase`Opened one: ${pour}.`,
  openedSo: (at: string, pour: string) => `${at}: ${pour}`,
  openings: phrase`Opened so far`,
  takeOut: phrase`Take out`,
  takeOutOf: (what: string) => phrase`Take out the bottling ${what}`,
  takenOut: phrase`The bottling is taken out.`,
  gushLine: phrase`It gushed: chill the rest well, open them over a sink and away from faces, and do not shake them.`,
  gushBasis: phrase`Common practice, no source`,
} as const;
