import type { ReactNode } from 'react';
import { dayAndTime } from '#renderer/format/moments.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { sightingWords, words } from './words.ts';

type Sighting = ValueOf<'jars:open'>['sightings'][number];

/** A sighting in words: what its own text says where it needs one. */
export function sightingText({ what, note }: Pick<Sighting, 'what' | 'note'>): string {
  if (what === 'other') return note ?? sightingWords.other;
  if (what === 'smell' && note !== null) return words.smellsOf(note);
  return sightingWords[what];
}

export interface SaidSighting {
  readonly title: ReactNode;
  readonly note: string | null;
}

/** How a diary shows a sighting: struck through, with its correction, where it was a mistake. */
export function sightingSaid(sighting: Sighting): SaidSighting {
  const { what, note, correctedAt, correction } = sighting;
  const text = sightingText(sighting);
  const own = what === 'other' || what === 'smell' ? null : note;
  if (correctedAt === null) return { title: text, note: own };
  const corrected = words.correctedAt(dayAndTime(correctedAt), correction);
  return { title: <s>{text}</s>, note: own === null ? corrected : `${own} · ${corrected}` };
}
