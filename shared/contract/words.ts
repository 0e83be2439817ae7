import { z } from 'zod';
import { isLanguageTag } from '../asked-ways.ts';
import { computes } from './request.ts';

const language = z
  .string()
  .max(35)
  .refine(isLanguageTag, { error: 'must be the short name of a language, such as de or pt-BR' });
const said = z.string();
const translation = z.union([
  said,
  z.strictObject({
    by: z.int(),
    zero: said.optional(),
    one: said.optional(),
    two: said.optional(),
    few: said.optional(),
    many: said.optional(),
    other: said,
  }),
]);

const empty = z.strictObject({});

export const wordsRequests = {
  /** The languages that there are words for, besides English; with what is wrong with a file that can't be read. */
  'words:languages': computes(
    empty,
    z.strictObject({ languages: z.array(z.strictObject({ language, problem: z.string().nullable() })) }),
  ),
  /** The words of a language, or of the one that it is a kind of: de for de-AT. `total` counts what there is to say. */
  'words:read': computes(
    z.strictObject({ language }),
    z.strictObject({
      language,
      words: z.record(z.string(), translation),
      total: z.int(),
      unknown: z.int(),
    }),
  ),
} as const;
