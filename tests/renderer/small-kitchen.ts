import type { ValueOf } from '#shared/contract/all-requests.ts';

// A made-up kitchen of one trial, small enough to know by heart.

export function idOf(number: number): string {
  return `00000000-0000-7000-8000-${String(number).padStart(12, '0')}`;
}

export const kitchen: ValueOf<'kitchen:open'> = {
  name: 'Lane kitchen',
  measures: 'metric',
  currency: null,
  file: '/kitchens/lane.sidejar',
  readOnly: false,
  sampleRows: 0,
  counts: { trials: 1, jars: 2 },
};

type Trial = ValueOf<'trials:open'>;
type Jar = Trial['jarsWhole'][number];

const raspberries = { ingredient: 'raspberries', mass_g: 80, state: 'fresh' as const };

export const jarOf = (label: string, level: 1 | 2, change: Partial<Jar> = {}): Jar => ({
  id: idOf(100 + label.charCodeAt(0)),
  revision: 1,
  isSample: false,
  trial: idOf(1),
  level: idOf(10 + level),
  levelName: level === 1 ? '2 days' : '4 days',
  label,
  replicate: 1,
  isControl: level === 1,
  state: 'fermenting',
  base_mL: 800,
  plannedStart: '2026-05-01T09:00:00Z',
  plannedPull: level === 1 ? '2026-05-03T09:00:00Z' : '2026-05-05T09:00:00Z',
  startedAt: '2026-05-01T09:00:00Z',
  pulledAt: null,
  strainedAt: null,
  discardedAt: null,
  discardReason: null,
  isFrothy: false,
  ...change,
});

export const trial: Trial = {
  id: idOf(1),
  revision: 1,
  isSample: true,
  question: 'How long for raspberry?',
  factor: 'days',
  startsAt: '2026-05-01T09:00:00Z',
  endsAt: '2026-05-05T09:00:00Z',
  state: 'fermenting',
  levels: ['2 days', '4 days'],
  jars: 2,
  standing: 2,
  tastings: 0,
  calendar: 'staggered-pull',
  base: null,
  baseMould: null,
  baseEach_mL: 800,
  replicates: 1,
  vessel: { kind: 'open-jar', capacity_mL: 1000 },
  held: { additions: [raspberries], days: null, cover: 'cloth', temperature_C: 22, also: {} },
  seed: 1,
  note: null,
  levelsWhole: ([1, 2] as const).map((level) => ({
    id: idOf(10 + level),
    name: level === 1 ? '2 days' : '4 days',
    value: level * 2,
    isControl: level === 1,
    formula: { additions: [raspberries], days: level * 2, cover: 'cloth' as const, temperature_C: 22 },
  })),
  jarsWhole: [jarOf('A', 1), jarOf('B', 2)],
  tastingIds: [],
};

export const trialSummary: ValueOf<'trials:list'>['trials'][number] = {
  id: trial.id,
  revision: 1,
  isSample: true,
  question: trial.question,
  factor: 'days',
  startsAt: trial.startsAt,
  endsAt: trial.endsAt,
  state: 'fermenting',
  levels: trial.levels,
  jars: 2,
  standing: 2,
  tastings: 0,
};

const attribute = (name: string): NonNullable<ValueOf<'findings:read'>['analysis']>['attributes'][number] => ({
  attribute: name,
  tasters: 2,
  samples: 2,
  scores: 4,
  missing: 0,
  means: [
    { sample: '4 days', n: 2, mean: 7, low: 6, high: 8, letters: 'a' },
    { sample: '2 days', n: 2, mean: 4, low: 3, high: 5, letters: 'b' },
  ],
  test: null,
  variances: { taster: null, tasterBySample: null, error: null },
  pairs: null,
  versusControl: null,
  ranks: null,
  trend: {
    slope: 1.5,
    slopeLow: 1,
    slopeHigh: 2,
    slopeP: 0.01,
    curvature: null,
    curvatureP: null,
    pageL: null,
    pageP: null,
    curve: [
      { level: 2, fit: 4, low: 3.2, high: 4.8 },
      { level: 3, fit: 5.5, low: null, high: null },
      { level: 4, fit: 7, low: 6.2, high: 7.8 },
    ],
    best: null,
  },
  jars: null,
  reasons: [],
});

const score = (taster: string, sample: string, value: number) => ({
  taster,
  sample,
  attribute: 'tang',
  replicate: 1,
  score: value,
  jar: sample === '2 days' ? 'A' : 'B',
});

export const findings: ValueOf<'findings:read'> = {
  trial: trial.id,
  tastings: 1,
  scores: [score('Ana', '2 days', 3), score('Ben', '2 days', 5), score('Ana', '4 days', 6), score('Ben', '4 days', 8)],
  takenOut: [],
  levels: { '2 days': 2, '4 days': 4 },
  scales: { tang: [0, 10] },
  control: '2 days',
  liking: null,
  analysis: { attributes: [attribute('tang')], tasters: [] },
  headline: {
    sentence: 'Tang moved most with the days.',
    also: null,
    sureness: null,
    doubts: ['Only two tasters.'],
    small: [],
    winner: null,
  },
  tasters: [],
  withEverybody: null,
  sentences: [
    {
      attribute: 'tang',
      sentence: 'Tang rises with the days.',
      againstControl: 'Against “2 days”: “4 days” 3.0 points higher (1.0 to 5.0).',
      sureness: 'fairly',
      chance: 0.02,
    },
  ],
};

export const undoState: ValueOf<'undo:state'> = {
  undo: 'Add the taster Ana',
  undoRefused: null,
  undoStep: { step: 3, request: 'tasters:save' },
  redo: null,
};
