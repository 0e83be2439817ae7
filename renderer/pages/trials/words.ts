export const words = {
  title: 'Trials',
  lead: 'One question each. One thing moves, all else is held.',
  plan: 'Plan a trial',
  empty: {
    title: 'Ask one question',
    lines: [
      'How many days? How much fruit? Fresh or frozen? A trial answers one such question with a handful of jars from the same base, one of them the control: what you would make today.',
      'Afterwards you taste them blind, and see how much differs and how sure that is.',
    ],
  },
} as const;
