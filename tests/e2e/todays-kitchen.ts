import { hoursAgo } from './tasted-trial.ts';
import type { Workbench } from './workbench.ts';

export interface TodaysKitchen {
  readonly trial: string;
  readonly jars: readonly { readonly id: string; readonly label: string }[];
  readonly culture: string;
  readonly base: string;
}

/** A kitchen in the middle of its week: jars standing since two days, one late, a base to strain, grains to feed, bottles waiting. */
export async function todaysKitchen({ ask }: Workbench): Promise<TodaysKitchen> {
  const { culture } = await ask('cultures:save', {
    name: 'Grandmother’s grains',
    kind: 'water kefir',
    weight_g: 180,
    rests: 'fridge door',
    refreshedAt: hoursAgo(24 * 16),
  });
  await ask('cultures:log', { culture, what: 'weighed', weight_g: 150, at: hoursAgo(24 * 90) });
  await ask('cultures:log', { culture, what: 'refreshed', weight_g: 165, at: hoursAgo(24 * 40) });
  const { base } = await ask('bases:start', {
    name: 'Ginger base 3',
    culture,
    volume_mL: 4000,
    sugarStart_g_per_L: 60,
    madeAt: hoursAgo(60),
    wentIn: '4 L water\n240 g sugar\npeel of half a lemon',
  });
  const { trial, jars } = await ask('trials:save', {
    question: 'How many days with raspberries?',
    factor: 'days',
    levels: [
      { name: '1 day', value: 1 },
      { name: '3 days', value: 3 },
      { name: '4 days', value: 4 },
    ],
    control: '3 days',
    held: { additions: [{ ingredient: 'raspberries', mass_g: 75, state: 'fresh' }], cover: 'lid' },
    calendar: 'staggered-pull',
    baseAvailable_mL: 4000,
    baseEach_mL: 700,
    base,
    vessel: { kind: 'lidded-jar', capacity_mL: 1000 },
    start: hoursAgo(50),
    seed: 5,
  });
  await ask('jars:start', { jars: jars.map(({ id }) => id), at: hoursAgo(50) });
  await ask('bottles:fill', {
    jar: jars[1]?.id ?? '',
    count: 3,
    size_mL: 330,
    closure: 'swing-top',
    sugar_g_per_L: 9,
    lot: 'R-12',
    at: hoursAgo(20),
  });
  return { trial, jars, culture, base };
}
