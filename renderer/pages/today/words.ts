export const words = {
  title: 'Today',
  overdue: 'Overdue',
  today: 'Due today',
  later: 'Coming up',
  tastings: 'Open tastings',
  shelf: 'On the shelf',
  nothingDue: 'Nothing is due today.',
  empty: {
    title: 'Your shelf is empty',
    lines: [
      'A trial splits one base into jars and changes one thing in each. Here you see which jar is due, and when.',
      'New here? The sample kitchen shows a whole trial, from base to house recipe. It can be taken out again at any time.',
    ],
  },
  idle: {
    title: 'No jar is standing',
    line: 'All trials are tasted or not planned yet. What do you want to know next?',
  },
  pull: (jars: string) => `Pull ${jars}`,
  start: (jars: string) => `Start ${jars}`,
  pullButton: (count: number) => (count === 1 ? 'Pulled it' : `Pulled all ${count}`),
  startButton: (count: number) => (count === 1 ? 'Started it' : `Started all ${count}`),
  pulled: (jars: string) => `Pulled ${jars}.`,
  started: (jars: string) => `Started ${jars}.`,
  late: (span: string) => `${span} late`,
  openTrial: 'Open the trial',
} as const;
