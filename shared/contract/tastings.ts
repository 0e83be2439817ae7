import { z } from 'zod';
import { count, drawnSeed, id, line, moment, name, note, part, remark } from './fields.ts';
import { reads, writes } from './request.ts';

/** A score on a scale, a five-step just-about-right answer (−2 too little, 0 just right, 2 too much), or a place in a ranking. */
export const attributeKinds = ['scale', 'just-about-right', 'place'] as const;

const attributeInput = z
  .strictObject({
    name: line(100),
    kind: z.enum(['scale', 'just-about-right']).default('scale'),
    low: z.number().min(-1000).max(1000),
    high: z.number().min(-1000).max(1000),
    lowWord: remark(100).optional(),
    highWord: remark(100).optional(),
  })
  .refine(({ low, high }) => low < high, { error: 'the lower end must lie below the upper end', path: ['high'] })
  .refine(({ kind, low, high }) => kind === 'scale' || (low === -2 && high === 2), {
    error: 'a just-about-right answer runs from -2 (too little) to 2 (too much)',
    path: ['low'],
  });

const attribute = z.strictObject({
  id,
  name: z.string(),
  kind: z.enum(attributeKinds),
  low: z.number(),
  high: z.number(),
  lowWord: z.string().nullable(),
  highWord: z.string().nullable(),
});

/** While a tasting is open, `jar` and `level` are null unless the pouring list is asked for. */
const sample = z.strictObject({
  id,
  code: z.string(),
  served_mL: z.number().nullable(),
  jar: z.strictObject({ id, label: z.string(), level: z.string() }).nullable(),
  /** Its jar was discarded while the tasting was open: it is not served, and its scores don't count. */
  takenOut: z.strictObject({ at: z.string(), why: z.string() }).nullable(),
});

const servingOrder = z.strictObject({
  taster: id,
  name: z.string(),
  sittings: z.array(z.strictObject({ sitting: z.int(), codes: z.array(z.string()) })),
  warnings: z.array(z.string()),
});

const tastingSummary = z.strictObject({
  id,
  isSample: z.boolean(),
  name: z.string(),
  trial: id.nullable(),
  heldAt: z.string(),
  closedAt: z.string().nullable(),
  /** Put in order instead of scored. */
  isRanked: z.boolean(),
  /** Without those taken out, and so are scores and what is expected. */
  samples: z.int(),
  tasters: z.int(),
  scores: z.int(),
  expected: z.int(),
});

export const tastingWhole = tastingSummary.extend({
  served_C: z.number().nullable(),
  replicates: z.int(),
  note: z.string().nullable(),
  attributes: z.array(attribute),
  sampleList: z.array(sample),
  orders: z.array(servingOrder),
});

/** A score by the names that people use; scripts may pass ids in their place. A sample goes by its blind code, never by its jar. */
const scoreEntry = z.strictObject({
  taster: name,
  sample: name,
  attribute: name,
  replicate: count(1, 1000).default(1),
  /** `null` takes a score back. */
  score: z.number().min(-1000).max(1000).nullable(),
});

export const tastingRequests = {
  /** Builds a tasting from jars: blind codes, and a serving order for each taster. */
  'tastings:build': writes(
    z.strictObject({
      trial: id.optional(),
      name,
      heldAt: moment.optional(),
      served_C: z.number().min(-5).max(40).optional(),
      samples: z
        .array(z.strictObject({ jar: id, served_mL: z.number().positive().max(10_000).optional() }))
        .min(1)
        .max(24),
      tasters: z.array(id).min(1).max(500),
      attributes: z.array(attributeInput).min(1).max(40).optional(),
      /** True: tasters put the samples in order, best first, and score nothing. */
      ranked: z.boolean().default(false),
      replicates: count(1, 10).default(1),
      seed: drawnSeed,
      note: note.optional(),
    }),
    z.strictObject({ tasting: id, codes: z.record(z.string(), z.string()), warnings: z.array(z.string()) }),
  ),
  /** The newest first; of one trial, when it is named. `more`: there when the list goes on behind its limit. */
  'tastings:list': reads(
    z.strictObject({ trial: id.optional(), ...part }),
    z.strictObject({ tastings: z.array(tastingSummary), more: z.literal(true).optional() }),
  ),
  'tastings:open': reads(z.strictObject({ tasting: id }), tastingWhole),
  /** Which code is which jar: for the person who pours. */
  'tastings:pour': reads(z.strictObject({ tasting: id }), z.strictObject({ sampleList: z.array(sample) })),
  /** Who must not taste what, before anything is poured: allergens and alcohol, by taster. */
  'tastings:warn': reads(
    z.strictObject({ jars: z.array(id).max(24), tasters: z.array(id).max(500) }),
    z.strictObject({ warnings: z.array(z.strictObject({ taster: id, lines: z.array(z.string()) })) }),
  ),
  /** Reveals the codes. This can't be undone. */
  'tastings:close': writes(z.strictObject({ tasting: id }), z.strictObject({ tasting: id })),
  'tastings:remove': writes(z.strictObject({ tasting: id }), z.strictObject({ tasting: id })),
  'scores:enter': writes(
    z.strictObject({
      tasting: id,
      scores: z.array(scoreEntry).min(1).max(10_000),
      /** True: samples may share a place of a ranking, on purpose. Else a taster gives each place once, and a second is refused. */
      ties: z.boolean().default(false),
    }),
    z.strictObject({ entered: z.int(), removed: z.int() }),
  ),
  'scores:list': reads(
    z.strictObject({ tasting: id }),
    z.strictObject({
      scores: z.array(
        z.strictObject({
          taster: z.string(),
          sample: z.string(),
          attribute: z.string(),
          replicate: z.int(),
          score: z.number(),
        }),
      ),
    }),
  ),
  /**
   * What a taster said of a sample; empty words take it back. A remark that begins with “missed” says that the taster did not
   * get to this sample: its empty cells are no longer waited for.
   */
  'remarks:save': writes(
    z.strictObject({ tasting: id, taster: name, sample: name, words: note }),
    z.strictObject({ remark: id.nullable() }),
  ),
  'remarks:list': reads(
    z.strictObject({ tasting: id }),
    z.strictObject({
      remarks: z.array(z.strictObject({ taster: z.string(), sample: z.string(), words: z.string() })),
    }),
  ),
  /** What each column of a pasted table is taken for, so that a person can say it otherwise. Keeps nothing. */
  'scores:columns': reads(
    z.strictObject({
      table: z.string().min(1).max(20_000_000),
      mapping: z.record(z.string().max(200), z.string().max(200)).optional(),
    }),
    z.strictObject({
      /** `meaning`: taster, sample, attribute, score, replicate, or the column's own name; empty when it is left out. */
      columns: z.array(z.strictObject({ head: z.string(), meaning: z.string() })),
      rows: z.int(),
    }),
  ),
  /** A table of scores, as CSV, TSV or pasted from a spreadsheet. Rows that can't be taken are named; the others are kept. */
  'scores:import': writes(
    z.strictObject({
      tasting: id,
      table: z.string().min(1).max(20_000_000),
      mapping: z.record(z.string().max(200), z.string().max(200)).optional(),
      /** True: say what would happen, keep nothing. */
      preview: z.boolean().default(false),
    }),
    z.strictObject({
      accepted: z.int(),
      refused: z.array(
        z.strictObject({ row: z.int(), column: z.string().optional(), code: z.string(), message: z.string() }),
      ),
      /** How many more places were refused than the list names. */
      refusedMore: z.int().optional(),
    }),
    { long: true },
  ),
} as const;
