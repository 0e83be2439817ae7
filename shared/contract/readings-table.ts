import { z } from 'zod';
import { readingColumns } from '../closed-lists.ts';
import { id } from './fields.ts';
import { writes } from './request.ts';

export const readingsTableRequests = {
  /**
   * A table of readings of a trial's jars: CSV, TSV, a range pasted from a spreadsheet, or JSON records. Each row names its jar by label
   * and when: `at` (2026-05-02 09:30, this machine's time unless an offset stands there) or `hours` since the jar was started.
   */
  'readings:import': writes(
    z.strictObject({
      trial: id,
      table: z.string().min(1).max(20_000_000),
      /** Column head to meaning; an empty meaning leaves the column out. */
      mapping: z.record(z.string().max(200), z.enum([...readingColumns, ''])).optional(),
      /** True: say what would happen, keep nothing. */
      preview: z.boolean().default(false),
    }),
    z.strictObject({
      accepted: z.int(),
      columns: z.array(z.strictObject({ head: z.string(), meaning: z.string() })),
      refused: z.array(
        z.strictObject({ row: z.int(), column: z.string().optional(), code: z.string(), message: z.string() }),
      ),
      refusedMore: z.int(),
    }),
    { long: true },
  ),
} as const;
