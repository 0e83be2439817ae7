import { z } from 'zod';
import { id } from './fields.ts';
import { reads } from './request.ts';

export const foundKinds = [
  'trial',
  'jar',
  'tasting',
  'taster',
  'house-recipe',
  'base',
  'culture',
  'ingredient',
] as const;

export const findRequests = {
  /** What in this kitchen answers to these words; every word must occur, accents and case don't count. */
  'kitchen:find': reads(
    z.strictObject({ words: z.string().trim().min(1).max(200), most: z.int().min(1).max(100).default(20) }),
    z.strictObject({
      found: z.array(
        z.strictObject({ kind: z.enum(foundKinds), id: id.nullable(), name: z.string(), facts: z.string() }),
      ),
      /** How many more there are. */
      more: z.int(),
    }),
  ),
} as const;
