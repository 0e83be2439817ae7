import { useState } from 'react';
import type { MeasureSystem } from '#core/units/format-quantity.ts';
import { useKept } from '#renderer/app/use-kept.ts';
import type { Stem } from './gravity-reading.ts';
import { words } from './words.ts';

const isStem = (kept: unknown): kept is Stem => typeof kept === 'string' && Object.hasOwn(words.gravity.stems, kept);

/** What the kitchen's hydrometer is made for: as last chosen, else as is usual where it stands. */
export function useStem(system: MeasureSystem): [Stem, (stem: Stem) => void] {
  const { body, keep } = useKept('hydrometer');
  const [chosen, choose] = useState<Stem | null>(null);
  const usual = system === 'us' ? 'fahrenheit60' : 'celsius20';
  return [
    chosen ?? (isStem(body) ? body : usual),
    (stem) => {
      choose(stem);
      keep(stem);
    },
  ];
}
