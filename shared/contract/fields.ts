import { z } from 'zod';

// The words and numbers that every domain of the contract uses. Lengths are capped here, once.

/** A name a person gives: one line, 1–200 characters after trimming. */
export const name = z
  .string()
  .trim()
  .min(1)
  .max(200)
  .refine((text) => text.isWellFormed() && !/\p{Cc}/u.test(text), 'must be one line of ordinary characters');

/** A remark of any kind: up to 4,000 characters. */
export const note = z
  .string()
  .trim()
  .max(4000)
  .refine((text) => text.isWellFormed() && !/[^\P{Cc}\n\t\r]/u.test(text), 'must be ordinary characters');

/** An id of the store: UUID, lower case. */
export const id = z
  .string()
  .length(36, 'an id of this kitchen')
  .regex(/^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/, 'an id of this kitchen');

/** A moment: ISO 8601 with its offset. */
export const moment = z.iso
  .datetime({ offset: true })
  .max(40)
  .refine((text) => text >= '1900' && text < '2200', 'must lie between the years 1900 and 2200');

/** Whole number a person counts with. */
export const count = (least: number, most: number) => z.int().min(least).max(most);

export const volume_mL = z.number().min(0.001).max(1_000_000);
export const mass_g = z.number().min(0.001).max(1_000_000);
/** A temperature of kitchen work, from a deep freezer to boiling. */
export const temperature_C = z.number().min(-40).max(110);
export const sugar_g_per_L = z.number().min(0).max(1000);
export const alcohol_pctVol = z.number().min(0).max(20);
export const brix = z.number().min(0).max(80);
export const sg = z.number().min(0.9).max(1.4);
export const ph = z.number().min(0).max(14);
export const seed = z.int().min(0).max(4_294_967_295);
/** A seed for what must not be foreseen, such as blind codes: drawn anew where none is given. */
export const drawnSeed = seed.default(() => globalThis.crypto.getRandomValues(new Uint32Array(1))[0] ?? 1);

/** Which edition of a row the caller saw; a write with an older one is refused as `changed-since`. */
export const revision = z.int().min(1);

/** What a taster avoids or an ingredient brings: the 14 of EU law (Regulation 1169/2011, Annex II) that kitchens meet. */
export const allergens = [
  'gluten',
  'crustaceans',
  'eggs',
  'fish',
  'peanuts',
  'soya',
  'milk',
  'nuts',
  'celery',
  'mustard',
  'sesame',
  'sulphites',
  'lupin',
  'molluscs',
] as const;
export const allergen = z.enum(allergens);
