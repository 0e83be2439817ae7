export const windowWords = {
  title: 'This window',
  theme: 'Light or dark',
  themes: { system: 'as the system has it', light: 'light', dark: 'dark' },
  hours: 'Hours',
  hourWays: { system: 'as the system has it', '24': '24 hours: 17:30', '12': '12 hours: 5:30 pm' },
} as const;
