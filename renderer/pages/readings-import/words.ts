import { phrase } from '#core/words/phrase.ts';
import { counted } from '#renderer/format/counted.ts';

export const words = {
  title: phrase`Readings from a table`,
  lead: phrase`Paste a range from a spreadsheet, or choose a file: CSV, TSV or JSON. You see first what would be kept.`,
  paste: phrase`The table, with its heading row`,
  pasteHint: phrase`One row a reading: the jar’s label; when (2026-05-02 09:30) or hours since its start; then any of brix, sg, ph, temperature (°C or °F in its heading), acidity with its acid, note.`,
  example: phrase`jar\thours\tbrix\tph\nA\t24\t6.2\t3.5\nB\t24\t6.8\t3.6`,
  file: phrase`Or a file`,
  columns: phrase`What each column is taken for`,
  leaveOut: phrase`left out`,
  preview: phrase`What would be kept`,
  none: phrase`No reading can be taken.`,
  good: (count: number) => phrase`${counted(count, 'reading')} can be taken.`,
  bad: (count: number) => phrase`${counted(count, 'place')} in the table can’t be taken:`,
  row: phrase`Row`,
  column: phrase`Column`,
  why: phrase`Why`,
  more: (count: number) => phrase`and ${count} more.`,
  take: (count: number) => phrase`Take ${counted(count, 'reading')}`,
  taken: (count: number) => phrase`${counted(count, 'reading')} kept.`,
  looking: phrase`Looking at the table…`,
  taking: phrase`Keeping the readings…`,
} as const;

export const meaningWords: Readonly<Record<string, string>> = {
  '': words.leaveOut,
  jar: phrase`jar`,
  at: phrase`date and time`,
  hours: phrase`hours since the start`,
  brix: phrase`Brix (°Bx)`,
  sg: phrase`SG`,
  ph: 'pH',
  temperature_C: phrase`temperature (°C)`,
  temperature_F: phrase`temperature (°F)`,
  acidity_g_per_L: phrase`acidity (g/L)`,
  acidity_as: phrase`as which acid`,
  note: phrase`note`,
};
