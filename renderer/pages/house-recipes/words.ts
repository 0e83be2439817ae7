export const words = {
  title: 'House recipes',
  lead: 'What you decided to make again, each version with the trial it came from.',
  empty: {
    title: 'No house recipe yet',
    line: 'Once a tasting has shown which jar to keep, it becomes a house recipe: scaled to your batch, versioned, with the way back to every score.',
  },
} as const;
