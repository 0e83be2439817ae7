import { z } from 'zod';
import { allergens } from '../closed-lists.ts';

// The words and numbers that every domain of the contract uses. Lengths are capped here, once.

/** Characters that turn the direction of what follows, so that a line reads otherwise than it is stored (Unicode UAX #9, 2.1 and 2.2). */
const turning = /[\u202a-\u202e]/u;
const isolating = /[\u2066-\u2069]/u;

/** Whether a text may stand as one line: no control, no line break, nothing that makes it read otherwise. */
export function isLine(text: string): boolean {
  return text.isWellFormed() && !/[\p{Cc}\u2028\u2029]/u.test(text) && !turning.test(text) && !isolating.test(text);
}

/** Whether a text may stand as a remark: line breaks and tabs, but no other control, and nothing that turns its direction. */
export function isRemark(text: string): boolean {
  return text.isWellFormed() && !/[^\P{Cc}\n\t\r]/u.test(text) && !turning.test(text);
}

/** One line a person gives: so many characters at most, after trimming. */
export const line = (most: number) =>
  z.string().trim().min(1).max(most).refine(isLine, 'must be one line of ordinary characters');

/** Words a person gives or leaves empty. */
export const remark = (most: number) => z.string().trim().max(most).refine(isRemark, 'must be ordinary characters');

/** A name a person gives: one line, 1–200 characters after trimming. */
export const name = line(200);

/** A remark of any kind: up to 4,000 characters. */
export const note = remark(4000);

/** A file or folder of this machine. */
export const place = z
  .string()
  .min(1)
  .max(4000)
  .refine((text) => text.isWellFormed() && !text.includes('\0'), 'must be the name of a file or folder');

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

/** Part of a long list: at most so many, those that come behind the one of that id. */
export const part = { limit: z.int().min(1).max(100_000).optional(), after: id.optional() };

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

export const allergen = z.enum(allergens);
