import type { Workbench } from './workbench.ts';

// A trial prepared by requests alone, on a new kitchen.

export interface TastedTrial {
  readonly trial: string;
  readonly jars: readonly { readonly id: string; readonly label: string; readonly level: string }[];
}

const hour_ms = 3_600_000;

export function hoursAgo(hours: number): string {
  return new Date(Date.now() - hours * hour_ms).toISOString();
}

/** Three levels of days, all jars started and pulled. */
export async function pulledTrial({ ask }: Workbench, levels = ['1 day', '2 days', '3 days']): Promise<TastedTrial> {
  const { base } = await ask('bases:start', { name: 'Ginger bug 3', volume_mL: 3000, sugarStart_g_per_L: 50 });
  const { trial, jars } = await ask('trials:save', {
    question: 'How long for raspberry?',
    factor: 'days',
    levels: levels.map((name, place) => ({ name, value: place + 1 })),
    control: levels[1] ?? '',
    held: {
      additions: [{ ingredient: 'raspberries', mass_g: 75, state: 'fresh' }],
      cover: 'cloth',
      temperature_C: 22,
      stirring: 'daily',
    },
    calendar: 'staggered-pull',
    baseAvailable_mL: 3000,
    baseEach_mL: 800,
    vessel: { kind: 'swing-top', capacity_mL: 1000 },
    start: hoursAgo(100),
    seed: 7,
    base,
  });
  const ids = jars.map(({ id }) => id);
  await ask('jars:start', { jars: ids, at: hoursAgo(100) });
  await ask('jars:pull', { jars: ids, at: hoursAgo(20) });
  return { trial, jars };
}

/** The middle liking and tang of each level; each taster a little apart. */
const middles = [
  { tang: 2, liking: 5 },
  { tang: 4, liking: 7.5 },
  { tang: 6, liking: 5.5 },
];

/** Tastes the trial with these people and closes the tasting. */
export async function taste(
  workbench: Workbench,
  { trial, jars }: TastedTrial,
  names: readonly string[],
): Promise<void> {
  const { ask } = workbench;
  const tasters: string[] = [];
  for (const name of names) tasters.push((await ask('tasters:save', { name })).taster);
  const { tasting, codes } = await ask('tastings:build', {
    trial,
    name: 'Saturday',
    samples: jars.map(({ id }) => ({ jar: id })),
    tasters,
    attributes: [
      { name: 'tang', low: 0, high: 10 },
      { name: 'liking', low: 1, high: 9 },
    ],
  });
  const scores = names.flatMap((taster, t) =>
    jars.flatMap(({ id }, j) =>
      (['tang', 'liking'] as const).map((attribute) => ({
        taster,
        sample: codes[id] ?? '',
        attribute,
        score: (middles[j]?.[attribute] ?? 5) + (((t * 3 + j * 2) % 5) - 2) * 0.25,
      })),
    ),
  );
  await ask('scores:enter', { tasting, scores });
  await ask('tastings:close', { tasting });
}
