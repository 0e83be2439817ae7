import { z } from 'zod';

/** What stands at the head of every file that carries rows from one kitchen to another. */
export const carriedFormat = 'sidejar rows';

const cell = z.union([z.string().max(400_000), z.number(), z.null()]);
/** Such a file as a whole: rows by table, every cell words, a number or nothing. */
export const carriedFile = z.strictObject({
  format: z.literal(carriedFormat),
  holds: z.enum(['kitchen', 'trial']),
  schema: z.int().min(0).max(1_000_000),
  from: z.string().max(200),
  tables: z.record(z.string().max(60), z.array(z.record(z.string().max(60), cell)).max(10_000_000)),
});
