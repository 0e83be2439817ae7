import { phrase } from '#core/words/phrase.ts';

/** A sheet that a printer takes, upright. */
export interface PaperSize {
  readonly width_mm: number;
  readonly height_mm: number;
}

export type PaperName = 'a4' | 'letter';

/** A4 by ISO 216; US letter is 8.5 by 11 inches. */
export const paperSizes: Readonly<Record<PaperName, PaperSize>> = {
  a4: { width_mm: 210, height_mm: 297 },
  letter: { width_mm: 215.9, height_mm: 279.4 },
};

export const paperNames: Readonly<Record<PaperName, string>> = { a4: 'A4', letter: phrase`US letter` };
