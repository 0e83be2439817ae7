import { jarVolume_mL } from '#core/ferment/jar-volume.ts';
import { findIngredient } from '#core/pantry/find-ingredient.ts';
import type { JarVolumeOf } from '#core/trial/feasibility.ts';
import type { PlanInput } from '#core/trial/plan-input.ts';

/** A plan that works; tests move one member at a time. */
export const workingPlan: PlanInput = {
  question: 'How many days?',
  factor: 'days',
  levels: [
    { name: '1 day', value: 1 },
    { name: '2 days', value: 2 },
    { name: '3 days', value: 3 },
  ],
  control: '2 days',
  held: {
    additions: [{ ingredient: 'raspberries', mass_g: 75, state: 'fresh' }],
    cover: 'cloth',
    temperature_C: 22,
    also: {},
  },
  replicates: 1,
  calendar: 'staggered-pull',
  baseAvailable_mL: 3000,
  baseEach_mL: 800,
  vessel: { kind: 'open-jar', capacity_mL: 1000 },
  start: '2026-05-01T09:00:00+02:00',
  seed: 7,
};

export const pantryVolume: JarVolumeOf = (base_mL, additions) => ({
  volume_mL: jarVolume_mL(
    base_mL,
    additions.map(({ ingredient, mass_g }) => {
      const composition = typeof ingredient === 'string' ? findIngredient(ingredient)?.composition : ingredient;
      if (composition === undefined) throw new Error(`no ${String(ingredient)}`);
      return { mass_g, composition };
    }),
  ),
  uncertain: [],
});
