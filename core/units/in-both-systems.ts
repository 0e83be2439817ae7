import { formatQuantity } from './format-quantity.ts';
import type { Dimension } from './unit-table.ts';

/**
 * A quantity in metric and US measures, for a sentence that is written before anyone knows who reads it.
 *
 * @param stored in the stored unit of its dimension: mL, g, °C, g/L or bar
 * @param dimension what it measures
 * @example inBothSystems(3, 'pressure') // '3 bar (44 psi)'
 */
export function inBothSystems(stored: number, dimension: Exclude<Dimension, 'count' | 'brix' | 'sg'>): string {
  return `${formatQuantity(stored, dimension, 'metric')} (${formatQuantity(stored, dimension, 'us')})`;
}
