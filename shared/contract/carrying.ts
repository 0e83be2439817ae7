import { z } from 'zod';
import { id, place } from './fields.ts';
import { reads, writes } from './request.ts';

// Data in and out: everything as files, a trial for somebody else, findings as text.

const tableRows = z.array(z.strictObject({ table: z.string(), rows: z.int() }));
const named = z.strictObject({ table: z.string(), name: z.string() });

const takenIn = z.strictObject({
  /** The kitchen it comes from, and whether it carries all of it or one trial. */
  from: z.string(),
  holds: z.enum(['kitchen', 'trial']),
  fresh: tableRows,
  /** Rows that stand here already, alike. */
  same: z.int(),
  /** Rows that stand here in another edition; ours stay. */
  kept: z.array(named),
  /** Whose name is taken here, and what they are called now. */
  renamed: z.array(named.extend({ becomes: z.string() })),
  /** Photos' files that came along. */
  pictures: z.int(),
  taken: z.boolean(),
});

export const carryingRequests = {
  /** Everything in a new folder: CSV for each table with its description, and one JSON. Beside the kitchen unless `to` says otherwise. */
  'data:export': reads(
    z.strictObject({ to: place.optional() }),
    z.strictObject({
      folder: z.string(),
      files: z.array(z.strictObject({ name: z.string(), rows: z.int(), bytes: z.int() })),
    }),
    { long: true },
  ),
  /** One trial as the text of a file that somebody else can take in. */
  'data:trialFile': reads(
    z.strictObject({ trial: id }),
    z.strictObject({
      name: z.string(),
      text: z.string(),
      rows: z.int(),
      /** Tastings and tests that poured jars of other trials too, and so stay at home. */
      left: z.array(z.string()),
      /** Photos' files in it, and those that it had no room for or that are missing. */
      pictures: z.int(),
      picturesLeft: z.int(),
      /** True while a tasting in it is open: whoever reads the file sees the codes. */
      tellsCodes: z.boolean(),
    }),
  ),
  /** Takes in a file of either kind, by its text or by its place on this machine. `preview` only says what would happen. */
  'data:takeIn': writes(
    z
      .strictObject({
        text: z.string().min(1).max(40_000_000).optional(),
        file: place.optional(),
        preview: z.boolean().default(false),
      })
      .refine(({ text, file }) => (text === undefined) !== (file === undefined), {
        error: 'give either the text or the file',
        path: ['text'],
      }),
    takenIn,
    { long: true },
  ),
  /** What a trial found, as Markdown. */
  'findings:text': reads(z.strictObject({ trial: id }), z.strictObject({ name: z.string(), text: z.string() }), {
    long: true,
  }),
} as const;
