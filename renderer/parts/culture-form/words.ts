export const words = {
  name: 'Name',
  kind: 'Kind',
  kindHint: 'Water kefir, kombucha, ginger bug …',
  weight: 'Weight',
  weightHint: { metric: 'Drained, such as 210 g.', us: 'Drained, such as 7 1/2 oz.' },
  rests: 'Where it rests',
  restsHint: 'Such as fridge door. In the cold it is refreshed about every two weeks (common practice, no source).',
  refresh: 'Refresh it every',
  refreshHint: 'Such as 10 days; empty: the usual.',
  note: 'Note',
  keep: 'Keep',
  kept: 'Kept.',
} as const;
