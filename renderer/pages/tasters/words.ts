export const words = {
  title: 'Tasters',
  lead: 'Who tastes, and what each of them avoids. A serving order warns when a sample holds it.',
  add: 'Add a taster',
  change: 'Change',
  remove: 'Remove',
  removed: (name: string) => `${name} is in the bin.`,
  empty: {
    title: 'Nobody tastes yet',
    line: 'Add the people who will taste: three or four friends already tell more than one. Their scores stay with their name, for you alone.',
  },
} as const;
