import type { AskedOf } from '#shared/contract/all-requests.ts';
import type { TestDesk } from '#tests/store/temporary-kitchen.ts';

/** A days trial as a caller would write it. */
export const daysPlan: AskedOf<'trials:plan'> = {
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
    stirring: 'daily',
  },
  replicates: 1,
  calendar: 'staggered-pull',
  baseAvailable_mL: 3000,
  baseEach_mL: 800,
  vessel: { kind: 'open-jar', capacity_mL: 1000 },
  start: '2026-05-01T08:00:00.000Z',
  seed: 7,
};

export interface Prepared {
  readonly trial: string;
  readonly jars: { readonly id: string; readonly label: string; readonly level: string }[];
  readonly tasters: string[];
}

/** Saves the days trial, starts its jars, lets three days pass and pulls them; adds tasters. */
export async function preparedTrial({ ask, clock }: TestDesk, tasters = 4): Promise<Prepared> {
  const saved = await ask('trials:save', daysPlan);
  const ids = saved.jars.map(({ id }) => id);
  await ask('jars:start', { jars: ids, at: '2026-05-01T08:00:00.000Z' });
  clock.move(72);
  await ask('jars:pull', { jars: ids });
  const people: string[] = [];
  for (let index = 0; index < tasters; index += 1) {
    people.push((await ask('tasters:save', { name: `Taster ${String.fromCharCode(65 + index)}` })).taster);
  }
  return { trial: saved.trial, jars: saved.jars, tasters: people };
}
