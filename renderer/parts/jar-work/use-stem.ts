import type { MeasureSystem } from '#core/units/format-quantity.ts';
import { useKeptChoice } from '#renderer/app/use-kept-choice.ts';
import type { Stem } from './gravity-reading.ts';
import { words } from './words.ts';

function keptStem(body: unknown): Stem | null {
  return typeof body === 'string' && Object.hasOwn(words.gravity.stems, body) ? (body as Stem) : null;
}

/** What the kitchen's hydrometer is made for: as last chosen, else as is usual where it stands. */
export function useStem(system: MeasureSystem): [Stem, (stem: Stem) => void] {
  const [chosen, choose] = useKeptChoice('hydrometer', keptStem);
  return [chosen ?? (system === 'us' ? 'fahrenheit60' : 'celsius20'), choose];
}
