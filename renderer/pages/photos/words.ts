export const words = {
  title: 'Photos by day',
  lead: 'Every jar of the trial beside the others, a column for each day on which one was photographed.',
  jar: 'Jar',
  day: (day: number) => `Day ${day}`,
  what: (label: string, level: string, day: number) => `Jar ${label}, ${level}, day ${day}`,
  none: {
    title: 'No photos yet',
    line: 'Photos are added on each jar’s page: a file, a drop or a paste.',
    back: 'To the jars',
  },
  gone: { title: 'This trial is not here', line: 'It was taken out or undone.', back: 'To the trials' },
} as const;
