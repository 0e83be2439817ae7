export const words = {
  title: 'Sips',
  lead: 'Your own daily taste of each standing jar, label in sight. Sips stay apart from the panel’s scores.',
  none: 'No jar is standing.',
  noneLine: 'A jar can be sipped once it has been started and until it is discarded.',
  last: (said: string, when: string) => `Last: ${said} (${when}).`,
} as const;
