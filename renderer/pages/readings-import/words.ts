import { counted } from '#renderer/format/words.ts';

export const words = {
  title: 'Readings from a table',
  lead: 'Paste a range from a spreadsheet, or choose a file: CSV, TSV or JSON. You see first what would be kept.',
  paste: 'The table, with its heading row',
  pasteHint:
    'One row a reading: the jar’s label; when (2026-05-02 09:30) or hours since its start; then any of brix, sg, ph, temperature, acidity with its acid, note.',
  example: 'jar\thours\tbrix\tph\nA\t24\t6.2\t3.5\nB\t24\t6.8\t3.6',
  file: 'Or a file',
  columns: 'What each column is taken for',
  leaveOut: 'left out',
  preview: 'What would be kept',
  none: 'No reading can be taken.',
  good: (count: number) => `${counted(count, 'reading')} can be taken.`,
  bad: (count: number) => `${counted(count, 'place')} in the table can’t be taken:`,
  row: 'Row',
  column: 'Column',
  why: 'Why',
  more: (count: number) => `and ${count} more.`,
  take: (count: number) => `Take ${counted(count, 'reading')}`,
  taken: (count: number) => `${counted(count, 'reading')} kept.`,
  taking: 'Keeping the readings…',
} as const;

export const meaningWords: Readonly<Record<string, string>> = {
  '': words.leaveOut,
  jar: 'jar',
  at: 'date and time',
  hours: 'hours since the start',
  brix: 'Brix (°Bx)',
  sg: 'SG',
  ph: 'pH',
  temperature_C: 'temperature (°C)',
  acidity_g_per_L: 'acidity (g/L)',
  acidity_as: 'as which acid',
  note: 'note',
};
