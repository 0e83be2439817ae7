import { phrase } from '#core/words/phrase.ts';
import type { ValueOf } from '#shared/contract/all-requests.ts';
import { words } from './words.ts';

export interface PouredTray {
  readonly key: string;
  readonly title: string;
  /** Only a duo-trio has one. */
  readonly reference: string | null;
  readonly cups: readonly string[];
}

/** The pouring list as whoever pours reads it: each tray's cups from left to right, by code and jar. */
export function pouredTrays({ jarA, jarB, list }: ValueOf<'discriminations:pour'>): PouredTray[] {
  const jarOf = (letter: string | undefined) => (letter === 'A' ? jarA : jarB);
  const hasRounds = list.some(({ round }) => round > 1);
  return list.map(({ tasterName, round, cups, codes }, place) => {
    const colon = cups.indexOf(':');
    const served = cups.slice(colon + 1);
    return {
      key: String(place),
      title: hasRounds ? `${tasterName}, ${words.round(round)}` : tasterName,
      reference: colon === -1 ? null : phrase`jar ${jarOf(cups[0])}`,
      cups: codes.map((code, cup) => words.poured(code, jarOf(served[cup]))),
    };
  });
}
