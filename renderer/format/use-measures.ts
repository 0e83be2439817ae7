import { formatQuantity, type MeasureSystem } from '#core/units/format-quantity.ts';
import type { MeasuredIngredient } from '#core/units/kitchen-amount.ts';
import { useAnswer } from '#renderer/app/use-answer.ts';

export interface Measures {
  readonly system: MeasureSystem;
  readonly volume: (volume_mL: number) => string;
  readonly mass: (mass_g: number) => string;
  readonly temperature: (temperature_C: number) => string;
  readonly sugar: (sugar_g_per_L: number) => string;
  readonly pressure: (gauge_bar: number) => string;
  /** What the kitchen's own ingredients weigh by cup and spoon, where somebody said. */
  readonly measured?: (name: string) => MeasuredIngredient | undefined;
}

/** Quantities in the kitchen's own measures. */
export function measuresOf(system: MeasureSystem): Measures {
  return {
    system,
    volume: (volume_mL) => formatQuantity(volume_mL, 'volume', system),
    mass: (mass_g) => formatQuantity(mass_g, 'mass', system),
    temperature: (temperature_C) => formatQuantity(temperature_C, 'temperature', system),
    sugar: (sugar_g_per_L) => formatQuantity(sugar_g_per_L, 'concentration', system),
    pressure: (gauge_bar) => formatQuantity(gauge_bar, 'pressure', system),
  };
}

export function useMeasures(): Measures {
  const { data } = useAnswer('kitchen:open', {});
  return measuresOf(data?.measures ?? 'metric');
}
