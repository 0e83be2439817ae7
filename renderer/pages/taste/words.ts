export const words = {
  tastings: 'Tastings of this trial',
  none: 'Nobody has tasted these jars together yet.',
  name: 'Tasting',
  tasters: 'Tasters',
  scores: 'Scores',
  state: 'State',
  open: 'open, blind',
  closed: 'closed, codes revealed',
  ofExpected: (scores: number, expected: number) => `${scores} of ${expected}`,
} as const;
