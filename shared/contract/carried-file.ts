import { z } from 'zod';
import { isLine } from './fields.ts';

/** What stands at the head of every file that carries rows from one kitchen to another. */
export const carriedFormat = 'sidejar rows';

type Row = Readonly<Record<string, string | number | null>>;

const longestCell = 400_000;
/** Twice as many as the widest table has. */
const mostColumns = 60;

function isRow(value: unknown): value is Row {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return false;
  let columns = 0;
  for (const [column, cell] of Object.entries(value)) {
    columns += 1;
    if (columns > mostColumns || column.length > 60) return false;
    const isText = typeof cell === 'string' && cell.length <= longestCell;
    if (!isText && cell !== null && !(typeof cell === 'number' && Number.isFinite(cell))) return false;
  }
  return true;
}

/** As many as a trial may be photographed with; an object of very many members would take long to parse. */
export const mostPictures = 4000;

/** An 8 MB picture as base64. */
const longestPicture = 11_200_000;

/** Such a file as a whole: rows by table, every cell words, a number or nothing. Rows are looked at one by one, without a copy. */
export const carriedFile = z.strictObject({
  format: z.literal(carriedFormat),
  holds: z.enum(['kitchen', 'trial']),
  schema: z.int().min(0).max(1_000_000),
  from: z.string().max(200).refine(isLine),
  /** The files of its photos, by their SHA-256, as base64. */
  pictures: z.record(z.string().regex(/^[0-9a-f]{64}$/), z.string().max(longestPicture)).optional(),
  tables: z.record(z.string().max(60), z.array(z.custom<Row>(isRow)).max(10_000_000)),
});
