export const words = {
  name: 'Name',
  avoids: 'Avoids',
  avoidsAlcohol: 'Avoids alcohol',
  note: 'Note',
  keep: 'Keep',
  kept: 'Kept.',
} as const;
